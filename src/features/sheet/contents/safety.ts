/** The cautions a leader can act on while teaching, in one line (common practice). */
export const SAFETY_LINE =
  'Stop on dizziness, chest pain, odd breathlessness. Water, air, bikes set up, brake shown. No fast legs without resistance. Bike manual and house rules come first.'
