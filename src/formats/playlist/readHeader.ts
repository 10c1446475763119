import { splitFields } from './splitFields.ts'

/** What a column holds. A length column says in what its bare numbers count. */
export type Column = { holds: 'title' | 'artist' | 'tempo' | 'other' } | { holds: 'length'; unit: 'seconds' | 'minutes' | 'milliseconds' }

export interface Header {
  delimiter: string
  columns: Column[]
}

export const DELIMITERS = ['\t', '|', ';', ','] as const

const NAMES: [Column['holds'], RegExp][] = [
  ['title', /^(?:(?:song|track)(?: (?:name|title))?|title|name|titel|songtitel|lied)$/],
  ['artist', /^(?:(?:song |track )?artists?(?: names?)?(?:\(s\))?|artist name\(s\)|performers?|by|interpret(?:en|in)?|künstler(?:in)?)$/],
  ['length', /^(?:(?:song|track) )?(?:length|time|duration|länge|dauer|zeit|spielzeit)(?!\p{L})/u],
  ['tempo', /^(?:bpm|tempo|beats? (?:a|per) minute)\b/],
]

/** The first line of a table with named columns; undefined where it names no title or nothing beside it. */
export function readHeader(line: string): Header | undefined {
  for (const delimiter of DELIMITERS) {
    const columns = splitFields(line, delimiter).map(columnOf)
    const known = new Set(columns.map(({ holds }) => holds).filter((holds) => holds !== 'other'))
    if (known.has('title') && known.size >= 2) return { delimiter, columns }
  }
  return undefined
}

function columnOf(name: string): Column {
  const plain = name.toLowerCase().replace(/\s+/g, ' ').trim()
  const holds = NAMES.find(([, form]) => form.test(plain))?.[0] ?? 'other'
  if (holds !== 'length') return { holds }
  const unit = /\(?\bms\b|milli/.test(plain) ? 'milliseconds' : /\bmin(?:ute)?s?\b/.test(plain) ? 'minutes' : 'seconds'
  return { holds, unit }
}
