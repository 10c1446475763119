import { say } from '#words/said.ts'
import { DELIMITERS } from './readHeader.ts'
import { boundedLength, decimal, LENGTH_IN_LINE, type Reading, readLength } from './readLength.ts'
import { boundedTempo, readTempo, TEMPO_IN_LINE } from './readTempo.ts'
import { finished, type SongReading } from './songReading.ts'
import { splitFields } from './splitFields.ts'

const BARE_NUMBER = /^\d{1,4}(?:[.,]\d{1,3})?$/
const LIST_MARK = /^(?:[-*•–—]\s+|#?\d{1,3}[.)](?=\s)\s*|#\d{1,3}\s+|\d{1,3}\s+[-–—]\s+(?=\p{L}))/u
/** 127,5 bpm: the comma parts no fields, for no tempo has one digit. */
const DECIMAL_COMMA = /(?<![\d:.])(\d{2,3}),(\d)(?=\s*bpm)/gi
const POINT_OR_COLON = /^\d{1,2}[.,]\d{2}$/

/** What a line begins with. */
export type FirstOfLine = 'title' | 'artist'

/**
 * Reads a line as people write it: a title, with or without an artist, a length and a
 * tempo, in any order that tells which is which.
 *
 * Between fields stand tabs, bars, semicolons, commas, dashes or nothing. A number without
 * a unit is the tempo, unless it is the first of two (the length in seconds, then), or the
 * tempo is stated beside it. Of more than two texts the first is the title and the second
 * the artist, save between commas and dashes, which titles have too: there the last is the artist.
 *
 * @param first which of the two a line begins with; nothing in it tells
 */
export function songOfLine(line: string, first: FirstOfLine = 'title'): SongReading {
  const unmarked = line.replace(LIST_MARK, '').replace(DECIMAL_COMMA, '$1.$2')
  const found: Found = { texts: [], lengths: [], tempi: [], bare: [] }
  const delimiter = DELIMITERS.find((mark) => isDelimiter(unmarked, mark))
  if (delimiter === undefined) readFree(unmarked, found)
  else for (const field of withoutNumber(splitFields(unmarked, delimiter))) readField(field, found, delimiter)
  return concluded(found, delimiter === ',', first)
}

interface Found {
  texts: string[]
  lengths: string[]
  tempi: string[]
  bare: string[]
}

/** Commas and semicolons are also written inside titles; they part fields only where a field is nothing but a value. */
function isDelimiter(line: string, mark: string): boolean {
  const fields = splitFields(line, mark)
  if (fields.length < 2) return false
  return mark === '\t' || mark === '|' || fields.slice(1).some(isValue)
}

const isValue = (field: string) => BARE_NUMBER.test(field) || readLength(field) !== undefined || readTempo(field) !== undefined

/** The fields without a leading running number. */
function withoutNumber(fields: string[]): string[] {
  const [first = '', ...rest] = fields
  const numbered = /^#?\d{1,3}[.)]?$/.test(first) && rest.some((field) => field !== '' && !isValue(field))
  return numbered ? rest : fields
}

function readField(field: string, found: Found, delimiter: string): void {
  if (field === '') return
  if (readLength(field)) found.lengths.push(field)
  else if (readTempo(field)) found.tempi.push(field)
  else if (BARE_NUMBER.test(field) && found.texts.length > 0) found.bare.push(field)
  else if (delimiter === '\t' || !containsValue(field)) found.texts.push(field)
  else readFree(field, found)
}

const containsValue = (field: string) => field.search(LENGTH_IN_LINE) >= 0 || field.search(TEMPO_IN_LINE) >= 0

/** Stands where a value was taken out of a line: no text that is pasted holds it. */
const GAP = '\u0000'

function readFree(line: string, found: Found): void {
  const take = (into: string[]) => (value: string) => {
    into.push(value.trim())
    return GAP
  }
  const text = line.replaceAll(GAP, ' ').replace(TEMPO_IN_LINE, take(found.tempi)).replace(LENGTH_IN_LINE, take(found.lengths))
  for (const stretch of text.split(GAP)) readStretch(trimmed(stretch), found)
}

/** A stretch of a line with no value in it but, after a length, perhaps a bare tempo. */
function readStretch(stretch: string, found: Found): void {
  if (stretch === '') return
  if (BARE_NUMBER.test(stretch) && found.lengths.length > 0 && found.texts.length > 0) found.bare.push(stretch)
  else found.texts.push(stretch)
}

/** Without the separators and brackets that a value leaves behind at its edges. */
function trimmed(text: string): string {
  const head = text.replace(/^[\s,;:|/·•–—-]+/, '')
  // From the end back: a pattern would look for it from every separator inside.
  let end = head.length
  while (end > 0 && LEFT_AT_END.test(head[end - 1]!)) end--
  return head.slice(0, end).replace(/^[\s)\]}]+[\s,;:|/·•–—-]*/, '')
}

const LEFT_AT_END = /[\s,;:|/·•–—([{-]/

function concluded({ texts, lengths, tempi, bare }: Found, byComma: boolean, first: FirstOfLine): SongReading {
  const bareLength = lengths.length === 0 && (bare.length > 1 || (bare.length === 1 && tempi.length > 0)) ? bare[0] : undefined
  const bareTempi = bareLength === undefined ? bare : bare.slice(1)
  const allTempi = [...tempi, ...bareTempi]
  const allLengths = bareLength === undefined ? lengths : [bareLength]
  if (allLengths.length > 1) return { ok: false, sentence: say('lists.twoLengths', { first: allLengths[0]!, second: allLengths[1]! }) }
  if (allTempi.length > 1) return { ok: false, sentence: say('lists.twoTempos', { first: allTempi[0]!, second: allTempi[1]! }) }
  const length = lengthOf(allLengths[0])
  if (length && !length.ok) return length
  const tempo = tempoOf(allTempi[0])
  if (tempo && !tempo.ok) return tempo
  const [title, artist] = first === 'title' ? titleAndArtist(texts, byComma) : artistAndTitle(texts, byComma)
  return finished(title, artist, length?.value, tempo?.value)
}

function lengthOf(text: string | undefined): Reading | undefined {
  if (text === undefined) return undefined
  if (POINT_OR_COLON.test(text)) return { ok: false, sentence: say('lists.unclearLength', { length: text }) }
  return readLength(text) ?? boundedLength(decimal(text), text)
}

function tempoOf(text: string | undefined): Reading | undefined {
  return text === undefined ? undefined : (readTempo(text) ?? boundedTempo(decimal(text), text))
}

function titleAndArtist(texts: string[], byComma: boolean): [title: string, artist?: string] {
  if (texts.length > 1) return byComma ? [texts.slice(0, -1).join(', '), texts.at(-1)] : [texts[0]!, texts[1]]
  const parts = dashed(texts[0])
  return parts.length > 1 ? [parts.slice(0, -1).join(' – '), parts.at(-1)] : [parts[0] ?? '']
}

/** The same the other way round: what is more than two belongs to the title, which has dashes and commas of its own. */
function artistAndTitle(texts: string[], byComma: boolean): [title: string, artist?: string] {
  if (texts.length > 1) return [byComma ? texts.slice(1).join(', ') : texts[1]!, texts[0]]
  const [artist = '', ...title] = dashed(texts[0])
  return title.length > 0 ? [title.join(' – '), artist] : [artist]
}

const dashed = (text = ''): string[] => text.split(/\s+-\s+|\s*[–—―]\s*/).filter((part) => part !== '')
