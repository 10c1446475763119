import { readVarint } from '#plan/link/varint.ts'
import { BrokenColumns, type ColumnReader, HEADS, MANNERS, toFront } from './columns.ts'
import { type Manner, unspell } from './spelling.ts'

/** Most values read from one link; a ride that `parseRide` takes needs far fewer. */
const MOST_VALUES = 2_000_000

/** Gives the next value of a column at every call. */
type Column = () => number

/**
 * Reads what a column writer wrote.
 * @throws BrokenColumns here or while taking, where the bytes end early or name a text that
 *   is not there, and after two million values
 */
export function columnReader(columnCount: number, bytes: Uint8Array): ColumnReader {
  let at = 0
  let left = MOST_VALUES
  const next = () => {
    const read = readVarint(bytes, at)
    if (!read) throw new BrokenColumns()
    at = read.next
    return read.value
  }
  const heads = Array.from({ length: columnCount }, () => readHead(next))
  const lengths = MANNERS.map(next)
  const columns = heads.map((head) => columnOf(head, next))
  const starts = new Map<Manner, number>(
    MANNERS.map((manner, i) => [manner, lengths.slice(0, i).reduce((sum, length) => sum + length, at)]),
  )
  const latest = Array.from({ length: columnCount }, (): string[] => [])

  const take = (column: number): number => {
    left -= 1
    if (left < 0) throw new BrokenColumns()
    return columns[column]!()
  }
  const spelledOut = (manner: Manner): string | undefined => {
    const read = unspell(bytes, starts.get(manner)!, manner)
    if (read) starts.set(manner, read.next)
    return read?.text
  }
  const takeText = (column: number, manner: Manner): string => {
    const place = take(column)
    const text = place === 0 ? spelledOut(manner) : latest[column]![place - 1]
    if (text === undefined) throw new BrokenColumns()
    toFront(latest[column]!, text)
    return text
  }
  return { take, takeText }
}

/** A head: its kind, and the value or the number of values that goes with it. */
function readHead(next: () => number): { kind: number; amount: number } {
  const head = next()
  if (head >= HEADS.listed) return { kind: HEADS.listed, amount: head - HEADS.listed }
  return { kind: head, amount: head === HEADS.zeros ? 0 : next() }
}

function columnOf({ kind, amount }: { kind: number; amount: number }, next: () => number): Column {
  if (kind === HEADS.zeros || kind === HEADS.equal) return () => amount
  const values = readList(amount, next)
  if (kind === HEADS.listed) return listed(values)
  return sparse(values, kind === HEADS.someOnes ? () => 1 : listed(readList(amount, next)))
}

/** Grown value by value: a length that lies ends at the end of the bytes, before it has taken any room. */
function readList(length: number, next: () => number): number[] {
  const values: number[] = []
  while (values.length < length) values.push(next())
  return values
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
