/** A number is written as it is; a text is quoted and guarded where it has to be. */
export type CsvCell = string | number | undefined

/** What a spreadsheet takes for the start of a formula, also behind a tab or a line end. */
const FORMULA = /^[=+\-@\t\r\n]/
/** What makes a field need quotes; spaces at the ends are kept by careless readers only inside them. */
const NEEDS_QUOTES = /[",\r\n]|^\s|\s$/

/**
 * One field: quotes around it where it holds a quote, a comma or a line end, quotes inside doubled.
 * Source: RFC 4180 (2005), section 2, rules 5 to 7.
 */
const quoteField = (text: string): string => (NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text)

/**
 * Text that no spreadsheet runs as a formula: behind an apostrophe where it starts like one.
 * Common practice; the apostrophe is seen where a file is read as plain text.
 */
const guardFormula = (text: string): string => (FORMULA.test(text) ? `'${text}` : text)

/**
 * Rows as comma-separated values, every one closed by CRLF. Numbers keep a full stop as their
 * decimal sign; what is no finite number and what is missing is an empty field.
 */
export const writeCsv = (rows: readonly (readonly CsvCell[])[]): string => rows.map((row) => `${row.map(writeCell).join(',')}\r\n`).join('')

function writeCell(cell: CsvCell): string {
  if (cell === undefined) return ''
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : ''
  return quoteField(guardFormula(cell))
}
