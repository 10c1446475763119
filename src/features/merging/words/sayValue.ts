import { formatChange } from '#engine/ledger/sayCall.ts'
import type { Scale } from '#engine/ledger/settingWords.ts'
import {
  type BeatGrid,
  type Bike,
  type Cadence,
  type Leader,
  type Length,
  type Move,
  type Resistance,
  type Ride,
  tempoOf,
} from '#plan/model.ts'
import { joinWords } from '#plan/names.ts'
import { plural, sayLength } from '#plan/words.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEffort } from '#units/formatEffort.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { formatSetting, formatSettingRange } from '#units/formatSetting.ts'
import { EIGHT } from '#units/units.ts'

/** What a value is said with: the ride it stands in gives the scale and the leaders' names. */
type Of = Pick<Ride, 'bike' | 'leaders'>
type Say = (value: never, ride: Of) => string

const NONE = 'none'

const text = (value: string) => (value === '' ? NONE : `“${value}”`)
const word = (value: string) => WORDS[value] ?? value
const yes = (value: boolean) => (value ? 'yes' : 'no')
const seconds = (value: number) => formatDuration(value)
const number = (value: number) => formatNumber(value, 2)
const leader = (id: string, { leaders }: Of) => leaders.find((one) => one.id === id)?.name || id

/** Values that are not the word they are said with. */
const WORDS: Record<string, string> = {
  offBike: 'off the bike',
  legsStill: 'legs still',
  countIn: 'count-in',
  loose: 'the loose wheel',
}

/** How a value of each field is said, by kind of thing and field; text and words as they are unless named here. */
const SAYS: Record<string, Say> = {
  'ride slotMinutes': (minutes: number) => `${formatNumber(minutes)} min`,
  'ride briefingSeconds': seconds,
  'ride clearUpSeconds': seconds,
  'ride startsAt': (clock: string) => clock,
  'ride bike': (bike: Bike) => bike.name || bike.unit,
  'ride leaders': (leaders: Leader[]) => joinWords(leaders.map(({ name }) => name)),
  'ride leader.wordsPerMinute': number,
  'ride avoidMoves': (moves: string[]) => joinWords(moves) || NONE,
  'section leadInSeconds': seconds,
  'section ridden': ({ inCount = 0, outCount }: { inCount?: number; outCount?: number }) =>
    outCount === undefined ? `from count ${inCount}` : `counts ${inCount} to ${outCount}`,
  'section song': ({ song }: { song?: { title: string } | null }) => (song ? text(song.title) : 'no song'),
  'section song.grid': (grid: BeatGrid) => `${formatNumber(tempoOf(grid), 1)} bpm, ${grid.beatsPerBar} a bar`,
  'section song.lengthSeconds': (length: number) => formatClock(length),
  'section song.strikesPerBeat': strikes,
  'section song.marks': (marks: unknown[]) => plural(marks.length, 'mark'),
  'section song.quiet': (quiet: unknown[]) => plural(quiet.length, 'stretch').replace('stretchs', 'stretches'),
  'set rounds': (rounds: number) => plural(rounds, 'round'),
  'set perRound': ({ steps }: { steps: number }, { bike }: Of) => `${formatChange(steps, bike)} a round`,
  'block length': (length: Length) => sayLength(length, EIGHT),
  'block resistance': (call: Resistance, { bike }: Of) => sayResistance(call, bike),
  'block ownTotal': (steps: number, { bike }: Of) => formatSetting(steps, bike.stepsPerUnit),
  'block cadence': sayCadence,
  'block strikesPerBeat': strikes,
  'block effort': ({ from, to }: { from: number; to: number }) =>
    from === to ? formatEffort(from) : `${formatEffort(from)} to ${formatEffort(to)}`,
  'block move': ({ name, counts, side, then }: Move) =>
    [`${name} on ${counts}`, side && `${side}${then ? ' first' : ''}`].filter((part) => part !== undefined).join(', '),
  'block easier': ({ text: words }: { text: string }) => text(words),
  'block harder': ({ text: words }: { text: string }) => text(words),
  'block leader': leader,
  'block mic': leader,
  'block eights': ({ minEights, maxEights }: { minEights?: number; maxEights?: number }) =>
    [minEights !== undefined && `at least ${minEights}`, maxEights !== undefined && `at most ${maxEights}`].filter(Boolean).join(', '),
  'cue lead': (lead: Length) => ('counts' in lead ? plural(lead.counts, 'count') : formatDuration(lead.seconds)),
  'cue count': (count: number) => `count-in of ${count}`,
}

/** Fields whose text is somebody's own words. */
const QUOTED = new Set(['title', 'aim', 'name', 'label', 'notes', 'feel', 'text', 'song.title', 'song.artist', 'leader.name'])

/** A value as it is said in a list of changes; "none" where there is none. */
export function sayValue(of: string, field: string, value: unknown, ride: Of): string {
  if (value === undefined || value === null) return field.endsWith('strikesPerBeat') && value === null ? 'off the beat' : NONE
  const say = SAYS[`${of} ${field}`]
  if (say) return say(value as never, ride)
  if (typeof value === 'boolean') return yes(value)
  if (typeof value === 'number') return number(value)
  return typeof value === 'string' ? (QUOTED.has(field) ? text(value) : word(value)) : 'changed'
}

function strikes(value: number): string {
  if (value === 0.5) return 'one every other beat'
  return value === 1 ? 'one a beat' : 'two a beat'
}

function sayCadence(cadence: Cadence): string {
  if (cadence === 'legsStill') return 'legs still'
  const { rpm, rampTo } = cadence
  return rampTo === undefined ? `${formatNumber(rpm)} rpm` : `${formatNumber(rpm)} to ${formatNumber(rampTo)} rpm`
}

function sayResistance(call: Resistance, scale: Scale): string {
  switch (call.kind) {
    case 'keep':
      return 'stay'
    case 'allOff':
      return 'all off'
    case 'total':
      return `to ${formatSettingRange(call.from, call.to, scale.stepsPerUnit)}`
    case 'byFeel':
      return `to ${formatSettingRange(call.from, call.to, scale.stepsPerUnit)} by feel`
    case 'change': {
      const change = formatChange(call.steps, scale)
      return call.mode === 'exact' ? change : `${change} ${call.mode === 'atLeast' ? 'or more' : 'if you have it'}`
    }
  }
}
