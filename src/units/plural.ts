/** A count with its noun: "1 song", "3 songs", "2 entries". */
export const plural = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`
