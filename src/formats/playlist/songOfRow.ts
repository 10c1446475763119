import { say } from '#words/said.ts'
import type { Column, Header } from './readHeader.ts'
import { boundedLength, decimal, type Reading, readLength } from './readLength.ts'
import { boundedTempo, readTempo } from './readTempo.ts'
import { finished, type SongReading } from './songReading.ts'
import { splitFields } from './splitFields.ts'

/** Reads one line of a table whose first line named its columns. Empty fields are unknown values. */
export function songOfRow(line: string, { delimiter, columns }: Header): SongReading {
  const fields = splitFields(line, delimiter)
  const field = (holds: Column['holds']) => fields[columns.findIndex((column) => column.holds === holds)] || undefined
  const lengthText = field('length')
  const tempoText = field('tempo')
  const length = lengthText === undefined ? undefined : lengthOf(lengthText, columns)
  if (length && !length.ok) return length
  const tempo = tempoText === undefined ? undefined : tempoOf(tempoText)
  if (tempo && !tempo.ok) return tempo
  return finished(field('title') ?? '', field('artist'), length?.value, tempo?.value)
}

const PLAIN = /^\d{1,9}(?:[.,]\d{1,3})?$/
const SECONDS_IN = { seconds: 1, minutes: 60, milliseconds: 0.001 }

function lengthOf(text: string, columns: Column[]): Reading {
  const said = readLength(text)
  if (said) return said
  const column = columns.find(({ holds }) => holds === 'length')
  if (column?.holds !== 'length' || !PLAIN.test(text)) return { ok: false, sentence: say('lists.unreadLength', { length: text }) }
  if (column.unit === 'seconds' && decimal(text) < 20) return { ok: false, sentence: say('lists.unclearLength', { length: text }) }
  return boundedLength(decimal(text) * SECONDS_IN[column.unit], text)
}

function tempoOf(text: string): Reading {
  return (
    readTempo(text) ??
    (PLAIN.test(text) ? boundedTempo(decimal(text), text) : { ok: false, sentence: say('lists.unreadTempo', { tempo: text }) })
  )
}
