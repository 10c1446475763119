import { type BitReader, bitReader } from './bits.ts'
import { readCode, readNumber, SMALL } from './code.ts'
import { BrokenColumns, type ColumnReader, KIND_BITS, KINDS, latestOf, MANNERS, newMemory, toFront } from './columns.ts'
import { type Manner, unspell } from './spelling.ts'

/** Most values read from one link; a ride that `parseRide` takes needs far fewer. */
const MOST_VALUES = 2_000_000

/** Most characters spelled out, as many as `parseRide` reads and what a closing full stop may add. */
const MOST_CHARACTERS = 1_000_001

/** Gives the next value of a column at every call. */
type Column = () => number

/** The columns of a link, and the lengths of the texts beside them, in bytes. */
interface Columns {
  columns: Column[]
  textLengths: number[]
  /** The first byte after the columns. */
  end: number
}

/** @throws RangeError or BrokenColumns where the bytes are no columns */
export function readColumns(columnCount: number, bytes: Uint8Array): Columns {
  const from = bitReader(bytes)
  const readList = listReader(from)
  const columns = Array.from({ length: columnCount }, () => readColumn(from, readList))
  const textLengths = MANNERS.map(() => readNumber(from, SMALL))
  return { columns, textLengths, end: from.nextByte() }
}

/**
 * Hands out what a column writer took.
 * @returns a reader that throws BrokenColumns where a column or the texts end early, and after two million values or a million characters
 */
export function columnReader({ columns, textLengths }: Columns, texts: Uint8Array): ColumnReader {
  const memory = newMemory()
  const starts = new Map<Manner, number>(
    MANNERS.map((manner, i) => [manner, textLengths.slice(0, i).reduce((sum, length) => sum + length, 0)]),
  )
  let left = MOST_VALUES
  let charactersLeft = MOST_CHARACTERS

  const take = (column: number): number => {
    left -= 1
    if (left < 0) throw new BrokenColumns()
    return columns[column]!()
  }
  const spelledOut = (manner: Manner): string => {
    const read = unspell(texts, starts.get(manner)!, manner, charactersLeft)
    if (!read) throw new BrokenColumns()
    starts.set(manner, read.next)
    charactersLeft -= read.text.length
    return read.text
  }
  const takeText = (column: number, manner: Manner): string => {
    const place = take(column)
    const known = latestOf<string>(memory, column)
    const text = place === 0 ? spelledOut(manner) : known[place - 1]
    if (text === undefined) throw new BrokenColumns()
    toFront(known, text)
    return text
  }
  return { memory, take, takeText }
}

function readColumn(from: BitReader, readList: () => number[]): Column {
  if (from.bits(1) === 0) return () => 0
  const kind = from.bits(KIND_BITS)
  if (kind === KINDS.equal) {
    const value = readNumber(from, SMALL)
    return () => value
  }
  if (kind === KINDS.listed) return listed(readList())
  return sparse(readList(), kind === KINDS.someOnes ? () => 1 : listed(readList()))
}

/** Lists are grown value by value: a length that lies ends at the end of the bytes, before it has taken any room. */
function listReader(from: BitReader): () => number[] {
  let length = 0
  let left = MOST_VALUES
  return () => {
    const isAsLong = from.bits(1) === 1
    if (!isAsLong) length = readNumber(from, SMALL)
    left -= length
    if (left < 0) throw new BrokenColumns()
    const code = readCode(from)
    const values: number[] = []
    while (values.length < length) values.push(readNumber(from, code))
    return values
  }
}

function listed(values: number[]): Column {
  let used = 0
  return () => {
    const value = values[used++]
    if (value === undefined) throw new BrokenColumns()
    return value
  }
}

function sparse(gaps: number[], others: Column): Column {
  let used = 0
  let zeros = gaps[0]
  return () => {
    if (zeros === undefined || zeros-- > 0) return 0
    zeros = gaps[++used]
    return others()
  }
}
