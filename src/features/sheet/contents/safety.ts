/** The cautions a leader can act on while teaching, in one line (common practice). */
export const SAFETY_LINE =
  'Stop on dizziness, chest pain or odd breathlessness. Water, air, bikes set up, brake shown. Never fast legs with no resistance. Bike manual and house rules come first.'
