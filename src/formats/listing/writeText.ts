import type { Listing } from './listing.ts'

/** Between two columns. */
const GAP = '  '

/** A listing as plain text: columns of numbers as wide as their widest entry, the last column free. Lines end in LF. */
export function writeText({ title, facts, head, numbers, sections, notes }: Listing): string {
  const rows = sections.flatMap((section) => section.rows)
  const widths = head.map((name, column) => Math.max(...[name, ...rows.map((row) => row[column] ?? '')].map(lengthOf)))
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, column) => (column === head.length - 1 ? oneLine(cell) : padded(oneLine(cell), widths[column]!, numbers.has(column))))
      .join(GAP)
      .trimEnd()
  return [
    oneLine(title),
    oneLine(facts.join(', ')),
    '',
    line(head),
    ...sections.flatMap((section) => ['', oneLine(section.title), oneLine(section.facts.join(', ')), ...section.rows.map(line)]),
    '',
    ...notes.map(oneLine),
    '',
  ].join('\n')
}

function padded(text: string, width: number, right: boolean): string {
  const space = ' '.repeat(Math.max(0, width - lengthOf(text)))
  return right ? space + text : text + space
}

const lengthOf = (text: string): number => [...oneLine(text)].length

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim()
