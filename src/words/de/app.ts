import type { en } from '#words/en/index.ts'

export const app: typeof en.app = {
  undone: ({ change }) => `Rückgängig gemacht: ${change}`,
  redone: ({ change }) => `Wiederholt: ${change}`,
  overruled: ({ change }) => `Inzwischen in einem anderen Fenster geändert: ${change}`,
}
