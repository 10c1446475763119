import { LIMITS } from '#plan/document/schema.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import type { Counts } from '#units/units.ts'
import { type Refusal, say, type Text } from '#words/said.ts'
import { faultOfOdd, type OddPlace } from './oddBeats.ts'
import { formatStart, parseStart } from './songPlace.ts'

/** Odd places as they are typed, one a line: the eight they come before, and the beats that are extra or missing: "33 +2". */
export const formatOdd = (odd: readonly OddPlace[], eight: Counts): string =>
  odd.map(([count, beats]) => `${formatStart(count, eight)} ${beats < 0 ? '−' : '+'}${Math.abs(beats)}`).join('\n')

/** "2 extra beats before eight 33" */
export const oddText = ([count, beats]: OddPlace, eight: Counts): Text =>
  say('songPlaces.odd', { beats, place: formatStart(count, eight), unit: eight })

/** Reads such lines, in any order; "2 extra" and "2 missing" may be written, too. */
export function parseOdd(text: string, eight: Counts): Parsed<OddPlace[], Refusal> {
  const odd: OddPlace[] = []
  for (const line of text.split('\n').map((each) => each.trim())) {
    if (line === '') continue
    const read = parseLine(line, eight)
    if (!read.ok) return read
    odd.push(read.value)
  }
  if (odd.length > LIMITS.odd) return refused(say('songPlaces.tooManyOdd', { most: LIMITS.odd }))
  odd.sort((a, b) => a[0] - b[0])
  const wrong = faultOfOdd(odd)
  return wrong ? refused(faultText(odd, wrong.index, eight)) : parsed(odd)
}

function parseLine(line: string, eight: Counts): Parsed<OddPlace, Refusal> {
  const halves =
    /^(\d+(?:\s*\+\s*\d+)?)\s+([+−–-]?)\s*(\d+(?:[.,]\d+)?)(?:\s+(?:beats?\s+)?(extra|over|missing|zusätzlich|fehlend|fehlt|fehlen))?$/.exec(
      line,
    )
  const count = halves && parseStart(halves[1]!, eight)
  if (!halves || !count) return refused(say('songPlaces.notOdd', { line, unit: eight }))
  if (!count.ok) return count
  const [, , sign, number, word] = halves
  const beats = Number(number!.replace(',', '.'))
  if (!Number.isInteger(beats)) return refused(say('songPlaces.partOfBeat', { line }))
  if (beats === 0) return refused(say('songPlaces.noBeat', { line }))
  if (beats > LIMITS.oddBeats) return refused(say('songPlaces.tooManyBeats', { line, most: LIMITS.oddBeats }))
  if (count.value > LIMITS.counts) return refused(say('songPlaces.beyondSong', { line }))
  const missing = /^(missing|fehl)/.test(word ?? '') || (word === undefined && sign !== '' && sign !== '+')
  return parsed([count.value, missing ? -beats : beats])
}

/** What is wrong between the lines of a list in order. */
function faultText(odd: readonly OddPlace[], index: number, unit: Counts): Text {
  const [count, beats] = odd[index]!
  const place = formatStart(count, unit)
  const before = odd[index - 1]
  if (before?.[0] === count) return say('songPlaces.twoLines', { place, unit })
  if (count === 0) return say('songPlaces.beforeFirst', { place, unit })
  const room = count - (before?.[0] ?? 0) - 1
  return say('songPlaces.noRoom', { place, missing: -beats, room, since: before && formatStart(before[0], unit), unit })
}
