import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { LONGEST_LEAD, startsWithBlock } from '#plan/cueStart.ts'
import { editSection } from '#plan/edits.ts'
import { type Block, type Cue, type Item, isSet, type Ride, type Section, tempoOf } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { type BeatFactor, otherStrikes, rescaledSong } from '#plan/songs/rescaledSong.ts'
import type { Counts } from '#units/units.ts'
import { say } from '#words/said.ts'

/**
 * Reads a section's song at twice or half its tempo, as lists and listeners often take it. What is
 * heard and ridden stays: blocks keep their time and the legs their cadence, so counts are doubled
 * or halved with the strikes the other way round. Halved odd counts go to the nearest whole one,
 * one at least. Nothing happens without beats, or outside 20 to 400 beats a minute.
 */
export function rescaleBeats(ride: Ride, { sectionId, factor }: { sectionId: string; factor: BeatFactor }): Command {
  const song = findSection(ride, sectionId)?.song
  const label = song?.grid
    ? say(factor === 2 ? 'commands.doubledTempo' : 'commands.halvedTempo', { title: song.title, bpm: tempoOf(song.grid) * factor })
    : say('commands.nothingTo', { verb: 'change' })
  return makeCommand(label, (before) => editSection(before, sectionId, (section) => rescaledSection(section, factor)))
}

/** A section whose song is read at twice or half its tempo; the same object where it cannot be. */
export function rescaledSection(section: Section, factor: BeatFactor): Section {
  const { song, inCount, outCount, ...rest } = section
  const next = song && rescaledSong(song, factor)
  if (!next || next === song) return section
  const scale = (count: Counts): Counts => Math.round(count * factor)
  return {
    ...rest,
    song: next,
    ...(inCount !== undefined && { inCount: scale(inCount) }),
    ...(outCount !== undefined && { outCount: scale(outCount) }),
    blocks: rescaledItems(section.blocks, factor, scale),
  }
}

type Scale = (count: Counts) => Counts

function rescaledItems(items: readonly Item[], factor: BeatFactor, scale: Scale): Item[] {
  const whole = (count: Counts) => Math.max(1, scale(count))
  const cue = (one: Cue): Cue =>
    'counts' in one.lead && !startsWithBlock(one.lead)
      ? { ...one, lead: { counts: Math.min(LONGEST_LEAD.counts, scale(one.lead.counts)) } }
      : one
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
