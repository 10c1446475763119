import { type BitWriter, bitWriter } from './bits.ts'
import { bestCode, SMALL, writeCode, writeNumber } from './code.ts'
import { type ColumnWriter, KIND_BITS, KINDS, latestOf, MANNERS, newMemory, toFront } from './columns.ts'
import { type Manner, spell } from './spelling.ts'

/**
 * Collects values by column, so that like stands beside like and packs well.
 *
 * A text is put as its place among the texts of its column, latest first, from 1; 0 is a
 * new one, which is spelled out beside the columns.
 */
export function columnWriter(columnCount: number): ColumnWriter & { finish: () => { columns: number[]; texts: number[] } } {
  const memory = newMemory()
  const columns = Array.from({ length: columnCount }, (): number[] => [])
  const spelled: Record<Manner, number[]> = { small: [], sentences: [] }
  return {
    memory,
    put: (column, value) => void columns[column]!.push(value),
    putText(column, text, manner) {
      const place = toFront(latestOf<string>(memory, column), text) + 1
      columns[column]!.push(place)
      if (place === 0) spell(text, manner, spelled[manner])
    },
    finish() {
      const to = bitWriter()
      const lists = listWriter(to)
      for (const values of columns) writeColumn(to, values, lists)
      for (const manner of MANNERS) writeNumber(to, spelled[manner].length, SMALL)
      return { columns: to.bytes(), texts: MANNERS.flatMap((manner) => spelled[manner]) }
    },
  }
}

function writeColumn(to: BitWriter, values: number[], writeList: WriteList): void {
  const [first = 0] = values
  const places = values.flatMap((value, i) => (value === 0 ? [] : [i]))
  to.bits(places.length === 0 ? 0 : 1, 1)
  if (places.length === 0) return
  if (values.every((value) => value === first)) {
    to.bits(KINDS.equal, KIND_BITS)
    writeNumber(to, first, SMALL)
  } else if (3 * places.length <= values.length) writeSparse(to, values, places, writeList)
  else {
    to.bits(KINDS.listed, KIND_BITS)
    writeList(values)
  }
}

function writeSparse(to: BitWriter, values: number[], places: number[], writeList: WriteList): void {
  const others = places.map((place) => values[place]!)
  const onlyOnes = others.every((value) => value === 1)
  to.bits(onlyOnes ? KINDS.someOnes : KINDS.someOthers, KIND_BITS)
  writeList(places.map((place, i) => place - (places[i - 1] ?? -1) - 1))
  if (!onlyOnes) writeList(others)
}

type WriteList = (values: number[]) => void

/** Most lists are as long as the one before: every block has a terrain, a posture, an effort. */
function listWriter(to: BitWriter): WriteList {
  let lengthBefore = 0
  return (values) => {
    const isAsLong = values.length === lengthBefore
    to.bits(isAsLong ? 1 : 0, 1)
    if (!isAsLong) writeNumber(to, values.length, SMALL)
    lengthBefore = values.length
    const code = bestCode(values)
    writeCode(to, code)
    for (const value of values) writeNumber(to, value, code)
  }
}
