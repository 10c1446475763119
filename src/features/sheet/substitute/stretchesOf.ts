import { feelOfTotal } from '#engine/demand/feelOfTotal.ts'
import type { PlayedBlock } from '#engine/report.ts'
import type { Block, Posture, Ride, Terrain } from '#plan/model.ts'
import { effortWords } from '#units/effortWords.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Effort, Seconds } from '#units/units.ts'
import { minutesWords } from './minutesWords.ts'
import { withoutSongWords } from './songWords.ts'
import type { StretchGroup } from './substituteContents.ts'

/** Blocks next to each other that are ridden alike, as one. */
export interface Stretch {
  id: string
  seconds: Seconds
  length: string
  effort: { from: Effort; to: Effort }
  level: string
  /** What the effort is called. */
  effortWords: string
  posture: Posture
  road: string
  /** What the knob should feel like, with the total for the room's own bikes. */
  feel: string
  /** Moves, water, and the like. */
  notes: string[]
  /** Options, easier before harder. */
  options: string[]
}

const ROADS: Record<Terrain, string> = {
  flat: 'flat',
  tempo: 'steady flat',
  hill: 'climb',
  run: 'run out of the saddle',
  jumps: 'up and down',
  surge: 'surge',
  push: 'push',
  recover: 'recovery',
  flush: 'easy roll',
  stretch: 'stretch',
  hold: 'hold',
}

/** A section's blocks as stretches, what repeats in turn said once with its times. */
export function stretchesOf(ride: Ride, played: readonly PlayedBlock[]): StretchGroup[] {
  const runs: PlayedBlock[][] = []
  for (const block of played) {
    const run = runs.at(-1)
    if (run && goesOn(run.at(-1)!, block)) run.push(block)
    else runs.push([block])
  }
  return inTurns(runs.map((run) => stretchOf(ride, run)))
}

/** Ridden alike: same body and road, no new option, and an effort and total that do not jump. */
function goesOn(before: PlayedBlock, next: PlayedBlock): boolean {
  const [a, b] = [before.block, next.block]
  return (
    a.posture === b.posture &&
    a.terrain === b.terrain &&
    a.move?.name === b.move?.name &&
    a.easier?.text === b.easier?.text &&
    !b.water &&
    Math.abs(a.effort.to - b.effort.from) < 1
  )
}

function stretchOf(ride: Ride, run: readonly PlayedBlock[]): Stretch {
  const [first, last] = [run[0]!, run.at(-1)!]
  const effort = { from: first.block.effort.from, to: last.block.effort.to }
  const seconds = last.to - first.from
  return {
    id: `${first.index}`,
    seconds,
    length: minutesWords(seconds),
    effort,
    level: effort.from === effort.to ? formatNumber(effort.from, 1) : `${formatNumber(effort.from, 1)}–${formatNumber(effort.to, 1)}`,
    effortWords: effortWords(Math.max(effort.from, effort.to)),
    posture: first.block.posture,
    road: first.cadence.kind === 'still' ? 'legs still' : ROADS[first.block.terrain],
    feel: feelWords(ride, last),
    notes: notesOf(first.block),
    options: optionsOf(first.block),
  }
}

/** "solid hill (2)": the feel, then the total for the room's own bikes; the planner's own words where there are any. */
function feelWords(ride: Ride, { block, ledger, cadence }: PlayedBlock): string {
  if (cadence.kind === 'still') return 'wheel stopped'
  const own = lower(withoutSongWords(block.feel ?? ''))
  const feel = own === '' ? feelOfTotal(ledger.after.nominal, ride) : own
  return `${feel} (${ledger.total})`
}

function notesOf({ move, water, allOut, walk, notes }: Block): string[] {
  const words = [
    move && lower(withoutSongWords(move.name)),
    allOut ? 'all out' : '',
    water ? 'water' : '',
    walk ? 'leave the bike, walk among them' : '',
    withoutSongWords(notes ?? ''),
  ]
  return words.filter((word): word is string => Boolean(word))
}

/** Staying seated is always an option and said once, at the foot. */
function optionsOf({ easier, harder }: Block): string[] {
  const easy = withoutSongWords(easier?.text ?? '')
  const hard = withoutSongWords(harder?.text ?? '')
  return [...(easy && !/^stay seated\.?$/i.test(easy) ? [`easier: ${lower(easy)}`] : []), ...(hard ? [`harder: ${lower(hard)}`] : [])]
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1).replace(/\.$/, '')

/** Longest pattern looked for; nobody holds more than four things in turn in the head. */
const LONGEST_TURN = 4

/** Patterns that come at least twice in a row, the shortest first, said once. */
function inTurns(stretches: readonly Stretch[]): StretchGroup[] {
  const groups: StretchGroup[] = []
  for (let at = 0; at < stretches.length; ) {
    const turn = turnAt(stretches, at)
    groups.push({ times: turn.times, stretches: stretches.slice(at, at + turn.length) })
    at += turn.times * turn.length
  }
  // What comes once stands together.
  return groups.reduce<StretchGroup[]>((merged, group) => {
    const before = merged.at(-1)
    if (before?.times === 1 && group.times === 1) before.stretches = [...before.stretches, ...group.stretches]
    else merged.push({ ...group })
    return merged
  }, [])
}

function turnAt(stretches: readonly Stretch[], at: number): { length: number; times: number } {
  for (let length = 2; length <= LONGEST_TURN; length++) {
    let times = 1
    while (repeats(stretches, at, length, times)) times++
    if (times > 1) return { length, times }
  }
  return { length: 1, times: 1 }
}

const repeats = (stretches: readonly Stretch[], at: number, length: number, times: number): boolean =>
  Array.from({ length }, (_, i) => i).every((i) => {
    const [one, other] = [stretches[at + i]!, stretches[at + times * length + i]]
    return other !== undefined && alike(one, other)
  })

/** Near enough to be said once: lengths within a quarter, the same body, road and effort. Feel and options are those of the first. */
const alike = (a: Stretch, b: Stretch): boolean =>
  Math.abs(a.seconds - b.seconds) <= Math.max(a.seconds, b.seconds) / 4 &&
  a.posture === b.posture &&
  a.road === b.road &&
  a.level === b.level
