import type { en } from '#words/en/index.ts'

export const speech: typeof en.speech = {
  language: 'Sprache der Ansagen',
  noVoice: ({ language }) =>
    `Dieser Browser hat keine Stimme für ${language}. Er spricht die Ansagen mit der Stimme, die er hat, und spricht Wörter falsch aus.`,
}
