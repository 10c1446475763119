/** "Ridge and Return (30 min)": the parent's title with the length, in place of the one it may say already; within 300 characters. */
export function variantTitle(title: string, minutes: number): string {
  const bare = title.replace(/\s*\(\d+ min\)$/, '')
  return `${[...bare].slice(0, MOST_OF_IT).join('')} (${minutes} min)`
}

/** A character may be two code units, of which a title holds 300. */
const MOST_OF_IT = 140
