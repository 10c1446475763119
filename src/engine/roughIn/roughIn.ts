import { otherFoot } from '#engine/cadence/trackFeet.ts'
import { constantsOf } from '#engine/constants.ts'
import { energyOf, type SongDrive } from '#engine/loudness/energyOf.ts'
import type { Energy } from '#engine/loudness/guessEnergy.ts'
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
import { PHRASE_EIGHTS, type Segment } from './phrases.ts'
import { sayDraft } from './sayDraft.ts'
import { type Random, seededRandom } from './seededRandom.ts'
import { segmentsOf } from './segments.ts'
import { settle } from './settle.ts'
import { isOpen, type Stretch, stretchesOf, trimToSlot } from './stretches.ts'
import { doesLeans, PARTS } from './styles.ts'
import { totalFinder } from './totals.ts'

interface RoughInOptions {
  /** The same seed gives the same draft; another one another. */
  seed: number
  /** Read from the ride's own words unless given. */
  aim?: Aim
  /** What is known of the songs' sound and drive, by their ids. */
  drives?: ReadonlyMap<string, SongDrive>
}

/** A proposed first draft. */
interface RoughDraft {
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
 * marks, or on its loud and quiet stretches where its loudness is known, effort and resistance that agree for the rider the class is judged for, then the engine's
 * own repairs. Blocks there are already stay untouched. No clock and no chance but the seed.
 * Null where there is no such song. Cost: some dozens of computations of the ride.
 */
export function roughIn(ride: Ride, { seed, aim = readAim(ride.aim), drives = NOTHING_KNOWN }: RoughInOptions): RoughDraft | null {
  const trimmed = trimToSlot(ride)
  const stretches = stretchesOf(trimmed)
  if (!stretches.some(({ open }) => open)) return null
  const rules = constantsOf(ride)
  const random = seededRandom(seed)
  const known = stretches.map(({ section }) => drives.get(section.song?.id ?? '') ?? {})
  const energies = stretches
    .map(({ section }, index) => section.song && energyOf(section.song, known[index]!))
    .map((one) => one ?? undefined)
  const arc = arcOf(stretches, trimmed, rules, energies)
  const parts = castSongs({ stretches, places: arc.places, ride, aim, rules, random, energies })
  const drafts = draftSongs({ ride: trimmed, stretches, arc, parts, known, energies, random })
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

const NOTHING_KNOWN: ReadonlyMap<string, SongDrive> = new Map()

/** A song on the way from its style to its blocks. */
export interface SongDraft extends Draft {
  stretch: Stretch
  index: number
  part: Part
  /** How much drive it has, where that is known. */
  energy?: Energy
  /** Its loud and quiet stretches where its work follows them. */
  form?: readonly Segment[]
}

interface Drafting {
  ride: Ride
  stretches: readonly Stretch[]
  arc: Arc
  parts: readonly (Part | null)[]
  known: readonly SongDrive[]
  energies: readonly (Energy | undefined)[]
  random: Random
}

function draftSongs(drafting: Drafting): SongDraft[] {
  const { ride, stretches, arc, parts, energies } = drafting
  const drafts = stretches.flatMap((stretch, index): SongDraft[] => {
    const part = parts[index]
    if (!part) return []
    const energy = energies[index]
    const base = { stretch, index, part, intensity: arc.places[index]!.intensity, eightSeconds: stretch.eightSeconds }
    return [{ ...base, ...(energy !== undefined && { energy }), ...planSong(drafting, index, part) }]
  })
  const seconds = stretches.reduce((sum, { one, to }) => sum + to - one, 0)
  return keepToShare(drafts, seconds, 0, ride.level, constantsOf(ride))
}

function planSong({ ride, stretches, arc, known, random }: Drafting, index: number, part: Part): Pick<SongDraft, 'planned' | 'form'> {
  const rules = constantsOf(ride)
  const stretch = stretches[index]!
  const { role, intensity } = arc.places[index]!
  const { eights, eightSeconds, one } = stretch
  const last = index === stretches.length - 1
  if (role === 'warmUp') {
    const at = one - ride.briefingSeconds
    return { planned: layWarmUp(PARTS[part.style].down, eights, eightSeconds, at, arc.warmUpEnd - ride.briefingSeconds) }
  }
  if (role === 'recovery') return { planned: layRecovery(eights) }
  if (role === 'coolDown') return { planned: layCoolDown(eights, eightSeconds, last) }
  // The cool-down may begin inside the song, at a phrase.
  const easy = Math.max(0, stretch.to - arc.coolDownStart)
  const wanted = easy > 1 ? Math.ceil(easy / eightSeconds / PHRASE_EIGHTS) * PHRASE_EIGHTS : 0
  const tail = Math.max(0, Math.min(eights - PHRASE_EIGHTS, wanted))
  const { segments, heard } = segmentsOf(stretch, eights - tail, LEVEL_PLANS[ride.level].form, random, known[index]!.loudness)
  const song = {
    style: part.style,
    segments,
    intensity,
    finish: role === 'finish',
    leans: doesLeans(ride.avoidMoves),
    eightSeconds,
    rest: tail > 0 ? 0 : stretch.rest,
    easyAfter: tail * eightSeconds,
  }
  const work = layWork(song, ride.level, rules)
  const warmed = underCeiling(work, one, eightSeconds, arc.warmUpEnd, rules.warmUpEffort - 0.5)
  const planned = tail > 0 ? [...warmed, ...layCoolDown(tail, eightSeconds, last)] : warmed
  return heard ? { planned, form: segments } : { planned }
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
