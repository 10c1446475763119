import { LEVEL_RANGES } from '#engine/roughIn/levels.ts'
import { blocksOf } from '#plan/clip/clip.ts'
import { fitClip } from '#plan/clip/fitClip.ts'
import { editBlocksOf, sameValue } from '#plan/edits.ts'
import { atTotal } from '#plan/ledger/ledgerState.ts'
import { limitsOf } from '#plan/ledger/limits.ts'
import { standingAt } from '#plan/ledger/playCall.ts'
import { playItem, standingBefore } from '#plan/ledger/standingBefore.ts'
import type { Foot, Item, Level, Ride, Section, Song } from '#plan/model.ts'
import { type SongPlan, withoutIds } from '#plan/songPlans/songPlan.ts'
import type { KnobSteps } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'
import { fitKnob } from './fitKnob.ts'
import { fitPart, inOctaveOf } from './fitPart.ts'
import { fitStrokes } from './fitStrokes.ts'

/** A plan as it would stand in a ride. */
interface FittedPlan {
  items: readonly Item[]
  /** The section's song with the strokes it is ridden by; null where it has none. */
  song: Song | null
  /** The foot it begins with, where the section leaves that open. */
  lead?: Foot
  /** What was changed for this place, in whole sentences; empty where it comes as it was ridden. */
  said: readonly Text[]
  /** It is what the section has already. */
  isThere: boolean
}

/**
 * What was planned for a song, fitted to where it is to stand: to the part of the song that is used, the bike, the total riders
 * come in with, the level of the class, and, over another song, to its tempo and length. Pure; the same plan in the same place
 * gives the same blocks. Ids are those of the plan.
 *
 * @param section where it is to stand, with the song it is to have; its blocks are not looked at
 * @returns null where nothing of it lies in the used part
 */
export function fitPlan(plan: SongPlan, ride: Ride, section: Section): FittedPlan | null {
  const fitted = fitClip(plan.clip, ride)
  const planned = inOctaveOf(fitted.sections[0]!, section)
  const part = fitPart(planned, section)
  if (part.section.blocks.length === 0) return null
  const limits = limitsOf(ride)
  const was = part.before.reduce((standing, item) => playItem(item, standing, limits), standingAt(atTotal(fitted.from))).state.nominal
  const knob = fitKnob(part.section, ride, was, standingBefore(ride, section.id, 0))
  const capped = withinLevel(knob.section, plan.clip.ride.level, ride.level)
  const strokes = section.song ? fitStrokes(capped.section, planned.song!, section.song) : { section: capped.section, song: null }
  const { legs } = 'legs' in strokes ? strokes : {}
  const moved = legs && Math.round(legs.was) !== Math.round(legs.is)
  const lead = section.lead === undefined ? planned.lead : undefined
  return {
    items: strokes.section.blocks,
    song: strokes.song,
    ...(lead && { lead }),
    said: [
      ...part.said,
      ...(fitted.scaled === 'same' ? [] : [say(`clipboard.${fitted.scaled}`, { unit: ride.bike.unit })]),
      ...sayKnob(knob, ride),
      ...(capped.blocks > 0 ? [say('songPlans.capped', { level: ride.level, top: topOf(ride.level), blocks: capped.blocks })] : []),
      ...(isOtherLanguage(plan.clip.ride, ride) && hasCues(strokes.section) ? [say('songPlans.otherLanguage')] : []),
      ...(moved ? [say('songPlans.legs', { strikes: strokes.song!.strikesPerBeat!, from: legs.was, to: legs.is })] : []),
    ],
    isThere: sameValue(withoutIds(strokes.section.blocks), withoutIds(section.blocks)) && strokes.song === section.song,
  }
}

const isOtherLanguage = (a: Ride, b: Ride): boolean => (a.language ?? 'en') !== (b.language ?? 'en')

const hasCues = ({ blocks }: Section): boolean => blocksOf(blocks).some(({ cues }) => cues.length > 0)

function sayKnob({ shift, states }: { shift: KnobSteps; states?: KnobSteps }, { bike }: Ride): Text[] {
  const { stepsPerUnit, unit } = bike
  if (states !== undefined) return [say('songPlans.statesTotal', { total: states, stepsPerUnit, unit })]
  return shift === 0 ? [] : [say('songPlans.shifted', { shift, stepsPerUnit, unit })]
}

const LEVELS: readonly Level[] = ['beginner', 'mixed', 'advanced']

/** The hardest a class of a level is asked for. */
const topOf = (level: Level) => LEVEL_RANGES[level].finish

/** Efforts no higher than an easier class is asked for; a class of the same level or a harder one rides them as they were. */
function withinLevel(section: Section, was: Level, is: Level): { section: Section; blocks: number } {
  if (LEVELS.indexOf(is) >= LEVELS.indexOf(was)) return { section, blocks: 0 }
  const top = topOf(is)
  let blocks = 0
  const capped = editBlocksOf(section, (block) => {
    const { from, to } = block.effort
    if (Math.max(from, to) <= top) return block
    blocks += 1
    return { ...block, effort: { from: Math.min(top, from), to: Math.min(top, to) } }
  })
  return { section: capped, blocks }
}
