import { LIMITS } from '#plan/document/schema.ts'
import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { plural } from '#units/plural.ts'
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
  if (odd.length > LIMITS.odd) return refused(`A song has at most ${LIMITS.odd} odd places.`)
  odd.sort((a, b) => a[0] - b[0])
  const wrong = faultOfOdd(odd)
  return wrong ? refused(sayFault(odd, wrong.index, eight)) : parsed(odd)
}

function parseLine(line: string, eight: Counts): Parsed<OddPlace, Refusal> {
  const halves = /^(\d+(?:\s*\+\s*\d+)?)\s+([+−–-]?)\s*(\d+(?:[.,]\d+)?)(?:\s+(?:beats?\s+)?(extra|over|missing))?$/.exec(line)
  const count = halves && parseStart(halves[1]!, eight)
  if (!halves || !count) return refused(`“${line}” is no odd place. Write one a line, the ${nameOf(eight)} and the beats: 33 +2 or 65 −1.`)
  if (!count.ok) return count
  const [, , sign, number, word] = halves
  const beats = Number(number!.replace(',', '.'))
  if (!Number.isInteger(beats)) return refused(`“${line}” has part of a beat; extra and missing beats are whole.`)
  if (beats === 0) return refused(`“${line}” adds and takes no beat; take the line away.`)
  if (beats > LIMITS.oddBeats)
    return refused(`“${line}” has too many: at most ${LIMITS.oddBeats} beats can be extra or missing in one place.`)
  if (count.value > LIMITS.counts) return refused(`“${line}” lies beyond any song.`)
  const missing = word === 'missing' || (word === undefined && sign !== '' && sign !== '+')
  return parsed([count.value, missing ? -beats : beats])
}

/** What is wrong between the lines of a list in order. */
function sayFault(odd: readonly OddPlace[], index: number, eight: Counts): string {
  const [count, beats] = odd[index]!
  const place = `${nameOf(eight)} ${formatStart(count, eight)}`
  const before = odd[index - 1]
  if (before?.[0] === count) return `There are two lines for ${place}; write all its beats in one.`
  if (count === 0) return `Nothing is counted before ${place}, so no beat can be extra or missing there; set the first beat instead.`
  const room = count - (before?.[0] ?? 0) - 1
  const since = before ? `after ${nameOf(eight)} ${formatStart(before[0], eight)}` : 'from the first beat on'
  const most = room < 1 ? 'none can be missing there' : `at most ${room} can be missing there`
  return `Before ${place} ${most}, not ${-beats}: only ${plural(room + 1, 'count')} ${room === 0 ? 'lies' : 'lie'} before it ${since}.`
}

const nameOf = (eight: Counts) => (eight === 6 ? 'six' : 'eight')
