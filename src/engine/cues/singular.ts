/** "pushes" → "push", "hills" → "hill". */
export const singular = (word: string): string => word.replace(/(sh|ch|s|x)es$/, '$1').replace(/([^s])s$/, '$1')
