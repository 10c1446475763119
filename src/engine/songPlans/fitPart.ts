import { lengthsFor, sayChange, withLengths } from '#engine/fit/sectionFit.ts'
import { rescaledSection } from '#plan/commands/rescaleBeats.ts'
import { editBlocksOf, withItems } from '#plan/edits.ts'
import { type Item, isCounted, isSet, type Section, tempoOf } from '#plan/model.ts'
import { playedOut } from '#plan/playedOut.ts'
import { amountOf, remeasureItem } from '#plan/remeasure.ts'
import { isSameSong } from '#plan/songPlans/songPlan.ts'
import { countsOf, eightOf } from '#plan/songs/beatGrid.ts'
import { say, type Text } from '#words/said.ts'
import { cutItems, playedIn } from './cutItems.ts'

/** Blocks of a plan as they lie in the part of a song that is used. */
interface FittedPart {
  section: Section
  /** What was cut off the front: riders stand where it left them. */
  before: readonly Item[]
  said: readonly Text[]
}

/** Tempos this near are the same song’s, heard once more. */
const SAME_TEMPO = 0.01

/**
 * What was planned over a song, in the measure and the used part of a section with its own song. In the same song every change
 * stays where it falls in the music, and what lies outside the used part is cut off. In another song counts stay counts; what
 * is too long for it is shortened as fitting blocks to a song does, or else cut off at its end.
 *
 * @returns a section with the blocks and the song of `target`; never longer than what `target` plays
 */
export function fitPart(planned: Section, target: Section): FittedPart {
  const there = { ...target, blocks: planned.blocks }
  return isPlacedAlike(planned, target) ? sameSong(planned, there) : anotherSong(planned, there)
}

/**
 * A plan over a song whose tempo has been found to be twice or half of what it was taken for: its counts are doubled or
 * halved, so that every block keeps its time in the music. Any other is the same object.
 */
export function inOctaveOf(planned: Section, { song }: Section): Section {
  const [was, is] = [planned.song?.grid, song?.grid]
  if (!was || !is || !isSameSong(planned.song!, song!)) return planned
  const ratio = tempoOf(is) / tempoOf(was)
  const factor = ([2, 0.5] as const).find((one) => Math.abs(ratio / one - 1) < SAME_TEMPO)
  return factor === undefined ? planned : rescaledSection(planned, factor)
}

/** Whether a count of the one is the same place in the music of the other. */
function isPlacedAlike({ song: a }: Section, { song: b }: Section): boolean {
  if (!a || !b || !isSameSong(a, b)) return false
  if (!a.grid || !b.grid) return !a.grid && !b.grid
  return eightOf(a.grid) === eightOf(b.grid) && Math.abs(tempoOf(a.grid) / tempoOf(b.grid) - 1) < SAME_TEMPO
}

/** Counts (or seconds) that the section's song plays; null where it has none to end it. */
const offeredBy = (section: Section): number | null => countsOf(section) ?? (section.song ? Math.floor(section.song.lengthSeconds) : null)

function sameSong(planned: Section, target: Section): FittedPart {
  const unit = isCounted(target) ? eightOf(target.song?.grid) : 1
  // In-points are counts: without a beat a song is ridden from its start.
  const skipped = isCounted(target) ? (target.inCount ?? 0) - (planned.inCount ?? 0) : 0
  const from = Math.max(0, skipped)
  const offered = offeredBy(target) ?? Number.POSITIVE_INFINITY
  const long = playedIn(planned.blocks)
  const { items, before } = cutItems(planned.blocks, { from, to: skipped + offered, unit })
  const early = skipped < 0 ? withEarlier(items, -skipped) : items
  const kept = withItems(target, early)
  const off = { front: Math.min(long, from), end: Math.max(0, long - from - playedIn(items)) }
  return {
    section: kept,
    before,
    said: [
      ...(off.front > 0 || off.end > 0 ? [say('songPlans.cutToPart', { ...off, unit, counted: isCounted(target) })] : []),
      ...(skipped < 0 && early !== items ? [say('songPlans.startsEarlier', { counts: -skipped, unit })] : []),
      ...open(offered - playedIn(early), kept),
    ],
  }
}

/** The first block begins as much earlier as the song now does, so that all others stay in their places. */
function withEarlier(items: readonly Item[], counts: number): readonly Item[] {
  const [first, ...rest] = items
  if (!first) return items
  if (isSet(first)) return withEarlier([...playedOut(first).flat(), ...rest], counts)
  return [{ ...first, length: { counts: amountOf(first.length) + counts } }, ...rest]
}

function anotherSong(planned: Section, target: Section): FittedPart {
  const measured = withItems(target, inMeasure(planned, target))
  const unit = isCounted(target) ? eightOf(target.song?.grid) : 1
  const offered = offeredBy(target)
  const how = isCounted(planned) === isCounted(target) ? [] : [say(isCounted(target) ? 'clipboard.toEights' : 'clipboard.toSeconds')]
  const over = offered === null ? 0 : playedIn(measured.blocks) - offered
  if (over <= 0) return { section: measured, before: [], said: [...how, ...open(-over, measured)] }
  const fit = isCounted(target) ? lengthsFor(measured, offered!) : null
  if (fit?.ok) {
    const changes = fit.changes.map((change) => sayChange(change, unit))
    return { section: withLengths(measured, fit.lengths), before: [], said: [...how, say('songPlans.shortened', { changes })] }
  }
  const { items } = cutItems(measured.blocks, { from: 0, to: offered!, unit })
  const off = { front: 0, end: playedIn(measured.blocks) - playedIn(items) }
  return {
    section: withItems(measured, items),
    before: [],
    said: [...how, say('songPlans.cutToPart', { ...off, unit, counted: isCounted(target) })],
  }
}

/** Items as another section measures them: whole sixes under a song counted in six, whole eights under one in eight. */
function inMeasure(planned: Section, target: Section): readonly Item[] {
  const [was, is] = [eightOf(planned.song?.grid), eightOf(target.song?.grid)]
  if (!isCounted(planned) || !isCounted(target) || was === is) return planned.blocks.map((item) => remeasureItem(item, planned, target))
  return editBlocksOf(planned, (block) => {
    const { length } = block
    return 'counts' in length && length.counts % was === 0 ? { ...block, length: { counts: (length.counts / was) * is } } : block
  }).blocks
}

const open = (counts: number, section: Section): Text[] =>
  isCounted(section) && Number.isFinite(counts) && counts > 0
    ? [say('songPlans.leftOpen', { counts, unit: eightOf(section.song?.grid) })]
    : []
