import { DELIMITERS } from './readHeader.ts'

/** One entry of a list: a line, or the lines that a quoted cell of a table goes over, joined by spaces. */
interface LineRecord {
  /** Of its first line, from 1. */
  line: number
  text: string
}

/** Most lines of one entry: a cell of more is a quote that somebody forgot to close. */
const MOST_LINES_OF_ONE = 12

/** The entries of a text, empty lines among them. A line break inside a quoted cell belongs to the cell (RFC 4180, section 2, rule 6). */
export function recordsOf(text: string): LineRecord[] {
  const lines = text.split(/\r\n|[\n\r\u2028\u2029]/).map((line) => line.replace(/[\u00a0\u2007\u202f\ufeff]/g, ' ').trim())
  const records: LineRecord[] = []
  for (let from = 0; from < lines.length; ) {
    const near = lines.slice(from, from + MOST_LINES_OF_ONE)
    const count = Math.max(...DELIMITERS.map((delimiter) => linesOfRecord(near, delimiter)))
    records.push({ line: from + 1, text: near.slice(0, count).join(' ') })
    from += count
  }
  return records
}

/**
 * How many of these lines the record that starts in the first one has, with this mark between cells. More
 * than one where a cell that begins with a quote has its closing quote in a later line, before the mark or
 * at the end of that line, and the record has another cell besides; a quote that is never closed is a letter.
 */
function linesOfRecord(lines: readonly string[], delimiter: string): number {
  let line = 0
  let at = 0
  let cells = 1
  const isEnd = (on: number, place: number) => place === lines[on]!.length || lines[on]!.startsWith(delimiter, place)
  // Spaces, but not the tab that may part the cells.
  const skip = (on: number, place: number) => place + /^ */.exec(lines[on]!.slice(place))![0].length
  for (;;) {
    const start = skip(line, at)
    const closed = lines[line]![start] === '"' ? closingOf(lines, line, start + 1) : undefined
    const end = closed && skip(closed.line, closed.at)
    if (end !== undefined && isEnd(closed!.line, end)) {
      line = closed!.line
      at = end
    }
    const next = lines[line]!.indexOf(delimiter, at)
    if (next < 0) return cells > 1 ? line + 1 : 1
    cells += 1
    at = next + delimiter.length
  }
}

/** The place after the quote that closes a cell begun before; undefined where none does. */
function closingOf(lines: readonly string[], line: number, from: number): { line: number; at: number } | undefined {
  for (let at = from; line < lines.length; line++, at = 0) {
    for (let quote = lines[line]!.indexOf('"', at); quote >= 0; quote = lines[line]!.indexOf('"', at)) {
      if (lines[line]![quote + 1] !== '"') return { line, at: quote + 1 }
      at = quote + 2
    }
  }
  return undefined
}
