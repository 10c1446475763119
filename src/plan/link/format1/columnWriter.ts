import { writeVarint } from '#plan/link/varint.ts'
import { type ColumnWriter, HEADS, MANNERS, toFront } from './columns.ts'
import { type Manner, spell } from './spelling.ts'

/**
 * Collects values by column, so that like stands beside like and packs well: the heads of
 * all columns, then their values, then all texts by manner.
 *
 * A text is put as its place among the texts of its column, latest first; 0 is a new one,
 * which is spelled out.
 */
export function columnWriter(columnCount: number): ColumnWriter & { bytes: () => Uint8Array } {
  const columns = Array.from({ length: columnCount }, (): number[] => [])
  const latest = Array.from({ length: columnCount }, (): string[] => [])
  const texts: Record<Manner, number[]> = { names: [], small: [], sentences: [] }
  return {
    put: (column, value) => void columns[column]!.push(value),
    putText(column, text, manner) {
      const place = toFront(latest[column]!, text)
      columns[column]!.push(place)
      if (place === 0) spell(text, manner, texts[manner])
    },
    bytes() {
      const heads: number[] = []
      const lists: number[] = []
      for (const values of columns) writeColumn(values, heads, lists)
      for (const manner of MANNERS) writeVarint(heads, texts[manner].length)
      return Uint8Array.from([heads, lists, ...MANNERS.map((manner) => texts[manner])].flat())
    },
  }
}

function writeColumn(values: number[], heads: number[], lists: number[]): void {
  const [first = 0] = values
  const places = values.flatMap((value, i) => (value === 0 ? [] : [i]))
  if (places.length === 0) writeVarint(heads, HEADS.zeros)
  else if (values.every((value) => value === first)) {
    writeVarint(heads, HEADS.equal)
    writeVarint(heads, first)
  } else if (2 * places.length <= values.length) writeSparse(values, places, heads, lists)
  else {
    writeVarint(heads, HEADS.listed + values.length)
    for (const value of values) writeVarint(lists, value)
  }
}

function writeSparse(values: number[], places: number[], heads: number[], lists: number[]): void {
  const others = places.map((place) => values[place]!)
  const onlyOnes = others.every((value) => value === 1)
  writeVarint(heads, onlyOnes ? HEADS.someOnes : HEADS.someOthers)
  writeVarint(heads, places.length)
  for (const [i, place] of places.entries()) writeVarint(lists, place - (places[i - 1] ?? -1) - 1)
  if (!onlyOnes) for (const value of others) writeVarint(lists, value)
}
