/** "pushes" → "push", "hills" → "hill", "presses" → "press". */
export const singular = (word: string): string => word.replace(/(sh|ch|ss|x)es$/i, '$1').replace(/([^s])s$/i, '$1')
