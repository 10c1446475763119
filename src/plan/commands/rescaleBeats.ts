import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection } from '#plan/edits.ts'
import { type Block, type Cue, type Item, isSet, type Ride, type Section, type Song, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { strikesForTempo } from '#plan/sectionsFromPlaylist.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Counts } from '#units/units.ts'

/** Twice the tempo, or half of it. */
export type BeatFactor = 2 | 0.5

/**
 * Reads a section's song at twice or half its tempo, as lists and listeners often take it. What is
 * heard and ridden stays: blocks keep their time and the legs their cadence, so counts are doubled
 * or halved with the strikes the other way round. Halved odd counts go to the nearest whole one,
 * one at least. Nothing happens without beats, or outside 20 to 400 beats a minute.
 */
export function rescaleBeats(ride: Ride, { sectionId, factor }: { sectionId: string; factor: BeatFactor }): Command {
  const song = findSection(ride, sectionId)?.song
  const label = song?.grid
    ? `Read ${song.title} at ${formatNumber(tempoOf(song.grid) * factor)} bpm, ${factor === 2 ? 'twice' : 'half'} the tempo`
    : 'Changed nothing'
  return makeCommand(label, (before) => editSection(before, sectionId, (section) => rescaled(section, factor)))
}

function rescaled(section: Section, factor: BeatFactor): Section {
  const { song, inCount, outCount, ...rest } = section
  if (!song?.grid) return section
  const bpm = tempoOf(song.grid) * factor
  if (bpm < 20 || bpm > 400) return section
  const scale = (count: Counts): Counts => Math.round(count * factor)
  return {
    ...rest,
    song: rescaledSong(song, factor, scale),
    ...(inCount !== undefined && { inCount: scale(inCount) }),
    ...(outCount !== undefined && { outCount: scale(outCount) }),
    blocks: rescaledItems(section.blocks, factor, scale),
  }
}

type Scale = (count: Counts) => Counts

function rescaledSong(song: Song, factor: BeatFactor, scale: Scale): Song {
  const grid = song.grid!
  return {
    ...song,
    // Anchors are whole counts: where halving would make them none, the outer two carry the tempo.
    grid: { ...grid, anchors: halves(grid.anchors, factor) },
    strikesPerBeat:
      otherStrikes(song.strikesPerBeat, factor) ?? (song.strikesPerBeat === null ? null : strikesForTempo(tempoOf(grid) * factor)),
    ...(song.marks && { marks: song.marks.map((mark) => ({ ...mark, count: scale(mark.count) })) }),
    ...(song.quiet && { quiet: song.quiet.map(({ from, to }) => ({ from: scale(from), to: Math.max(scale(from) + 1, scale(to)) })) }),
  }
}

type Anchors = NonNullable<Song['grid']>['anchors']

/** Anchors at other counts; on halving those on odd counts go, and where fewer than two stay all times are spread to whole counts by doubling the span. */
function halves(anchors: Anchors, factor: BeatFactor): Anchors {
  if (factor === 2) return anchors.map(([count, second]) => [count * 2, second])
  const even = anchors.filter(([count]) => count % 2 === 0)
  if (even.length >= 2) return even.map(([count, second]) => [count / 2, second])
  const [[c0, s0], [c1, s1]] = [anchors[0]!, anchors.at(-1)!]
  const at = Math.floor(c0 / 2)
  const perCount = (2 * (s1 - s0)) / (c1 - c0)
  const first = s0 + (at * 2 - c0) * (perCount / 2)
  return [
    [at, first],
    [at + (c1 - c0), first + (c1 - c0) * perCount],
  ]
}

const STRIKES: readonly StrikesPerBeat[] = [0.5, 1, 2]
const otherStrikes = (strikes: StrikesPerBeat, factor: BeatFactor): StrikesPerBeat | undefined =>
  strikes === null ? null : STRIKES.find((each) => each === strikes / factor)

function rescaledItems(items: readonly Item[], factor: BeatFactor, scale: Scale): Item[] {
  const whole = (count: Counts) => Math.max(1, scale(count))
  const cue = (one: Cue): Cue => ('counts' in one.lead ? { ...one, lead: { counts: scale(one.lead.counts) } } : one)
  const block = (one: Block): Block => {
    const strikes = one.strikesPerBeat === undefined ? undefined : otherStrikes(one.strikesPerBeat, factor)
    return {
      ...one,
      ...('counts' in one.length && { length: { counts: whole(one.length.counts) } }),
      ...(one.move && { move: { ...one.move, counts: whole(one.move.counts) } }),
      ...(strikes !== undefined && { strikesPerBeat: strikes }),
      cues: one.cues.map(cue),
    }
  }
  return items.map((item) => (isSet(item) ? { ...item, parts: item.parts.map(block) } : block(item)))
}
