import type { en } from '#words/en/index.ts'

export const speech: typeof en.speech = {
  language: 'Sprache der Ansagen',
}
