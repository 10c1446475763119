/** The language a ride is spoken in, and the voice that speaks it. */
export const speech = {
  language: 'language of the cues',
}
