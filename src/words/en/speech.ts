/** The language a ride is spoken in, and the voice that speaks it. */
export const speech = {
  language: 'language of the cues',
  /** Which language by its own name. */
  noVoice: ({ language }: { language: string }) =>
    `This browser has no ${language} voice. It speaks the cues with the voice it has, which will get words wrong.`,
}
