import { otherFoot } from '#engine/cadence/trackFeet.ts'
import { constantsOf } from '#engine/constants.ts'
import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { type Foot, type Item, isSet, type Ride, type Section } from '#plan/model.ts'
import { idsOf } from '#plan/places.ts'
import type { KnobSteps, Seconds } from '#units/units.ts'
import { type Aim, readAim } from './aims.ts'
import { type Arc, arcOf } from './arc.ts'
import { castSongs, type Part } from './castSongs.ts'
import { eightsOf, isRounds, joined, keptUnder, type Planned } from './chunks.ts'
import { type Draft, keepToShare } from './keepToShare.ts'
import { layCoolDown, layRecovery, layWarmUp } from './layEasy.ts'
import { layWork } from './layWork.ts'
import { LEVEL_PLANS } from './levels.ts'
import { makeBlocks } from './makeBlocks.ts'
import { sayDraft } from './sayDraft.ts'
import { type Random, seededRandom } from './seededRandom.ts'
import { PHRASE_EIGHTS, segmentsOf } from './segments.ts'
import { settle } from './settle.ts'
import { isOpen, type Stretch, stretchesOf, trimToSlot } from './stretches.ts'
import { doesLeans, PARTS } from './styles.ts'
import { totalFinder } from './totals.ts'

export interface RoughInOptions {
  /** The same seed gives the same draft; another one another. */
  seed: number
  /** Read from the ride's own words unless given. */
  aim?: Aim
}

/** A proposed first draft. */
export interface RoughDraft {
  ride: Ride
  /** Makes the draft the ride, as one change. */
  command: Command
  aim: Aim
  /** What is proposed and why, in whole sentences: the arc, then a line a song. */
  arc: string[]
  songs: { sectionId: string; text: string }[]
}

/**
 * A first draft for every song of a ride that nothing is planned for: an arc for the slot and the
 * level, terrain by the cadence each tempo gives, blocks on phrases or on the songs' own section
 * marks, effort and resistance that agree for the rider the class is judged for, then the engine's
 * own repairs. Blocks there are already stay untouched. No clock and no chance but the seed.
 * Null where there is no such song. Cost: some dozens of computations of the ride.
 */
export function roughIn(ride: Ride, { seed, aim = readAim(ride.aim) }: RoughInOptions): RoughDraft | null {
  const trimmed = trimToSlot(ride)
  const stretches = stretchesOf(trimmed)
  if (!stretches.some(({ open }) => open)) return null
  const rules = constantsOf(ride)
  const random = seededRandom(seed)
  const arc = arcOf(stretches, trimmed, rules)
  const parts = castSongs({ stretches, places: arc.places, ride, aim, rules, random })
  const drafts = draftSongs(trimmed, stretches, arc, parts, random)
  const filled = fill(trimmed, drafts, random() < 0.5 ? 'right' : 'left')
  const drafted = new Set(drafts.map(({ stretch }) => stretch.section.id))
  const proposal = settle(filled, drafted)
  return {
    ride: proposal,
    command: makeCommand(`Roughed in ${drafts.length === 1 ? 'one song' : `${drafts.length} songs`} (draft ${seed})`, (before) =>
      before === ride ? proposal : before,
    ),
    aim,
    ...sayDraft(proposal, arc, drafts),
  }
}

/** Whether a ride has a song that nothing is planned for. */
export const canRoughIn = (ride: Ride): boolean => ride.sections.some(isOpen)

/** A song on the way from its style to its blocks. */
export interface SongDraft extends Draft {
  stretch: Stretch
  index: number
  part: Part
}

function draftSongs(ride: Ride, stretches: readonly Stretch[], arc: Arc, parts: readonly (Part | null)[], random: Random): SongDraft[] {
  const rules = constantsOf(ride)
  const lastIndex = stretches.findLastIndex(({ open }) => open)
  const drafts = stretches.flatMap((stretch, index): SongDraft[] => {
    const part = parts[index]
    if (!part) return []
    const planned = planSong(ride, stretch, arc, index, part, index === lastIndex && index === stretches.length - 1, random)
    return [{ stretch, index, part, planned, intensity: arc.places[index]!.intensity, eightSeconds: stretch.eightSeconds }]
  })
  const seconds = stretches.reduce((sum, { one, to }) => sum + to - one, 0)
  return keepToShare(drafts, seconds, 0, ride.level, rules)
}

function planSong(ride: Ride, stretch: Stretch, arc: Arc, index: number, part: Part, last: boolean, random: Random): Planned[] {
  const rules = constantsOf(ride)
  const { role, intensity } = arc.places[index]!
  const { eights, eightSeconds, one } = stretch
  if (role === 'warmUp') {
    return layWarmUp(PARTS[part.style].down, eights, eightSeconds, one - ride.briefingSeconds, arc.warmUpEnd - ride.briefingSeconds)
  }
  if (role === 'recovery') return layRecovery(eights)
  if (role === 'coolDown') return layCoolDown(eights, eightSeconds, last)
  // The cool-down may begin inside the song, at a phrase.
  const easy = Math.max(0, stretch.to - arc.coolDownStart)
  const wanted = easy > 1 ? Math.ceil(easy / eightSeconds / PHRASE_EIGHTS) * PHRASE_EIGHTS : 0
  const tail = Math.max(0, Math.min(eights - PHRASE_EIGHTS, wanted))
  const head = eights - tail
  const segments = segmentsOf(stretch, head, LEVEL_PLANS[ride.level].form, random)
  const song = {
    style: part.style,
    segments,
    intensity,
    finish: role === 'finish',
    leans: doesLeans(ride.avoidMoves),
    eightSeconds,
    easyAfter: tail * eightSeconds,
  }
  const work = layWork(song, ride.level, rules)
  const warmed = underCeiling(work, one, eightSeconds, arc.warmUpEnd, rules.warmUpEffort - 0.5)
  return tail > 0 ? [...warmed, ...layCoolDown(tail, eightSeconds, last)] : warmed
}

/** Nothing that begins before the warm-up is over is harder than the warm-up. */
function underCeiling(planned: readonly Planned[], one: number, eightSeconds: number, warmUpEnd: number, ceiling: number): Planned[] {
  let at = one
  return planned.flatMap((item) => {
    const early = at < warmUpEnd - 1e-6
    at += eightsOf([item]) * eightSeconds
    return early ? keptUnder([item], ceiling) : [item]
  })
}

/** The ride with its open songs filled, the lead foot another from song to song. */
function fill(ride: Ride, drafts: readonly SongDraft[], firstLead: Foot): Ride {
  const newId = idMaker(ride)
  const making = { ride, rules: constantsOf(ride), totalFor: totalFinder(ride), newId }
  let total: KnobSteps | null = null
  let lead = firstLead
  let drank = ride.briefingSeconds
  const sections = ride.sections.map((section, index): Section => {
    const draft = drafts.find((one) => one.index === index)
    if (!draft) {
      total = lastTotal(section.blocks) ?? total
      return section
    }
    const { stretch } = draft
    const planned = stretch.one - drank >= DRINK_EVERY ? withWater(joined(draft.planned)) : joined(draft.planned)
    if (planned.some(drinks)) drank = stretch.one
    const song = { ...section.song!, strikesPerBeat: draft.part.strikes }
    const sung = { ...section, song }
    const filled = makeBlocks({ ...stretch, section: sung }, planned, total, making)
    total = filled.total
    const onFoot = draft.part.strikes !== null
    const led = onFoot ? { ...sung, lead: section.lead ?? lead, blocks: filled.blocks } : { ...sung, blocks: filled.blocks }
    if (onFoot) lead = otherFoot(section.lead ?? lead)
    return led
  })
  return { ...ride, sections }
}

/** Riders are told to drink about this often, at the start of a song (common practice; a warm room wants it sooner than the rule's limit). */
const DRINK_EVERY: Seconds = 540

const drinks = (one: Planned): boolean => !isRounds(one) && one.water === true

/** Told to drink in the first block that is no set. */
function withWater(planned: readonly Planned[]): Planned[] {
  const at = planned.findIndex((one) => !isRounds(one))
  return planned.map((one, index) => (index === at ? { ...one, water: true } : one))
}

/** The total a section of one's own states last, where it states one. */
function lastTotal(items: readonly Item[]): KnobSteps | null {
  const last = items.at(-1)
  const resistance = last && (isSet(last) ? last.parts.at(-1)! : last).resistance
  return resistance?.kind === 'total' ? resistance.to : null
}

/** Ids no part of the ride has, the same for the same ride. */
function idMaker(ride: Ride): () => string {
  const taken = new Set(idsOf(ride))
  let last = 0
  return () => {
    do last++
    while (taken.has(`draft${last}`))
    return `draft${last}`
  }
}
