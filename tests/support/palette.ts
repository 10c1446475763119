import { readFileSync } from 'node:fs'

export type Theme = 'light' | 'dark'

const source = readFileSync(new URL('../../src/ui/tokens.css', import.meta.url), 'utf8')
const PAIR = /^light-dark\((oklch\([^)]*\)), (oklch\([^)]*\))\)$/
const REFERENCE = /^var\(--([\w-]+)\)$/
const declared = new Map([...source.matchAll(/--([\w-]+):\s*([^;]+);/g)].reverse().map(([, name, value]) => [name!, value!.trim()]))

/** The colour of a token of src/ui/tokens.css in a theme. Throws on a token that is no colour. */
export function token(name: string, theme: Theme): string {
  const value = declared.get(name)
  const reference = value && REFERENCE.exec(value)
  if (reference) return token(reference[1]!, theme)
  const pair = value && PAIR.exec(value)
  if (!pair) throw new Error(`--${name} is not a pair of colours: ${value}`)
  return pair[theme === 'light' ? 1 : 2]!
}

/** Names of all tokens that are a pair of colours. */
export const COLOUR_TOKENS = [...declared].filter(([, value]) => PAIR.test(value)).map(([name]) => name)
