import type { en } from '#words/en/index.ts'

export const checkList: typeof en.checkList = {
  source: 'Quelle',
}
