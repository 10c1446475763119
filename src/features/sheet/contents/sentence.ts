/** Text with the full stop it lacks, if it lacks one. */
export const stopped = (text: string): string => (/[.!?…]["”’)]?$/u.test(text.trim()) ? text.trim() : `${text.trim()}.`)

/** Words as a sentence among others: "a quarter turn on" → "A quarter turn on." */
export const sentence = (words: string): string => stopped(words.charAt(0).toUpperCase() + words.slice(1))
