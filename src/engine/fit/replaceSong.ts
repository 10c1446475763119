import { countingUnit } from '#engine/timeline/countingUnit.ts'
import { unrollItems } from '#engine/timeline/unrollItems.ts'
import type { Command } from '#plan/commands/command.ts'
import { setSong } from '#plan/commands/setSong.ts'
import { type Ride, type Section, type Song, tempoOf } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { countsOf, secondAt } from '#plan/songs/beatGrid.ts'
import { withSong } from '#plan/songs/withSong.ts'
import type { Counts, Rpm, Seconds } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'

/** A block that no longer has its music, wholly or in part. */
interface FallenBlock {
  blockId: string
  name: Text
  /** Round of its set, from 1. */
  round?: number
  /** Counts past the song's end, of so many. */
  counts: Counts
  of: Counts
}

/** What another song does to a section whose counts stay. */
interface Replacement {
  /** Counts the blocks need and the song has. */
  needed: Counts
  offered: Counts
  /** What falls off the end, in order. */
  fallen: FallenBlock[]
  /** Counts of the song nothing is planned for. */
  open: Counts
  /** How much longer the section lasts; negative when it gets shorter. */
  seconds: Seconds
  /** Cadence on the beat before and after; null off the beat or without one. */
  rpm: { before: Rpm | null; after: Rpm | null }
  /** In whole sentences. */
  sentences: Text[]
  command: Command
}

/**
 * What giving a section another song would do: counts stay, clock times move, and what the new
 * song is too short for is named. Null where the section or the song has no beats.
 */
export function replaceSong(ride: Ride, sectionId: string, song: Song): Replacement | null {
  const section = findSection(ride, sectionId)
  if (!section?.song?.grid || !song.grid) return null
  const next = withSong(section, song)
  const offered = countsOf(next)!
  const { fallen, needed } = whatFalls(next, offered)
  const seconds = lengthOf(next, needed, offered) - lengthOf(section, needed, countsOf(section)!)
  const rpm = { before: onBeat(section.song), after: onBeat(song) }
  const open = Math.max(0, offered - needed)
  const sentences = inWords(next, { fallen, open, seconds, rpm })
  return { needed, offered, fallen, open, seconds, rpm, sentences, command: setSong(ride, { sectionId, song }) }
}

function whatFalls(section: Section, offered: Counts): { fallen: FallenBlock[]; needed: Counts } {
  const fallen: FallenBlock[] = []
  let count = 0
  for (const { block, set } of unrollItems(section.blocks)) {
    const of = 'counts' in block.length ? block.length.counts : 0
    const past = Math.min(of, Math.max(0, count + of - offered))
    count += of
    if (past > 0) fallen.push({ blockId: block.id, name: itemName(block), ...(set && { round: set.round }), counts: past, of })
  }
  return { fallen, needed: count }
}

function lengthOf(section: Section, needed: Counts, offered: Counts): Seconds {
  const grid = section.song!.grid!
  const from = section.inCount ?? 0
  return secondAt(grid, from + Math.max(needed, offered)) - secondAt(grid, from)
}

const onBeat = ({ grid, strikesPerBeat }: Song): Rpm | null =>
  grid && strikesPerBeat !== null ? (tempoOf(grid) * strikesPerBeat) / 2 : null

function inWords(section: Section, { fallen, open, seconds, rpm }: Pick<Replacement, 'fallen' | 'open' | 'seconds' | 'rpm'>): Text[] {
  const { eight: unit } = countingUnit(section)
  const falls = fallen.map(({ name, counts, of, round = null }) =>
    say(counts === of ? 'fit.fallsOff' : 'fit.fallsOffPart', { block: say('names.quoted', { name }), round, counts, unit }),
  )
  const left = open > 0 ? [say('fit.leftOpen', { counts: open, unit })] : []
  const longer = Math.abs(seconds) < 0.5 ? [] : [say('fit.songLonger', { seconds })]
  const moved = rpm.before !== null && rpm.after !== null && Math.round(rpm.before) !== Math.round(rpm.after)
  const pace = moved ? [say('fit.legsMove', { from: rpm.before!, to: rpm.after! })] : []
  return [...falls, ...left, ...longer, ...pace]
}
