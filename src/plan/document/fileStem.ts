/** Longest name before the ending; every file system in use takes far more, people read no further. */
const LONGEST = 60

/**
 * The name a ride's files start with: its title in lower case, spaces and anything a file system may
 * refuse as hyphens, accents folded; "ride" where nothing is left.
 */
export function fileStem(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase()
    .replace(/[^\p{Letter}\p{Number}]+/gu, '-')
  const cut = [...plain]
    .slice(0, LONGEST)
    .join('')
    .replace(/^-+|-+$/g, '')
  return cut || 'ride'
}
