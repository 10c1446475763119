import { otherFoot } from '#engine/cadence/trackFeet.ts'
import { constantsOf } from '#engine/constants.ts'
import { energyOf, type SongDrive } from '#engine/loudness/energyOf.ts'
import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { type Foot, type Item, isSet, type Ride, type Section } from '#plan/model.ts'
import { idsOf } from '#plan/places.ts'
import type { KnobSteps, Seconds } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'
import { type Aim, readAim } from './aims.ts'
import { arcOf } from './arc.ts'
import { isRounds, joined, type Planned } from './chunks.ts'
import { doseFor } from './doseFor.ts'
import { draftSongs, type SongDraft } from './draftSongs.ts'
import { levelPlan } from './levels.ts'
import { makeBlocks } from './makeBlocks.ts'
import { sayDraft } from './sayDraft.ts'
import { seededRandom } from './seededRandom.ts'
import { isOpen, stretchesOf, trimToSlot } from './stretches.ts'
import { totalFinder } from './totals.ts'
import { writeWords } from './words/writeWords.ts'

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
  arc: Text[]
  songs: { sectionId: string; text: Text }[]
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
  const known = stretches.map(({ section }) => drives.get(section.song?.id ?? '') ?? {})
  const energies = stretches
    .map(({ section }, index) => section.song && energyOf(section.song, known[index]!))
    .map((one) => one ?? undefined)
  const arc = arcOf(stretches, trimmed, rules, energies)
  const drafting = { ride: trimmed, stretches, arc, aim, rules, known, energies }
  const { proposal: settled, drafts } = doseFor(ride.level, (dose) => {
    const random = seededRandom(seed)
    const made = draftSongs({ ...drafting, plan: levelPlan(ride.level, dose), random })
    return { drafts: made, filled: fill(trimmed, made, random() < 0.5 ? 'right' : 'left') }
  })
  const drafted = new Set(drafts.map(({ stretch }) => stretch.section.id))
  const proposal = writeWords(settled, drafted, seededRandom(seed + 1), arc)
  return {
    ride: proposal,
    command: makeCommand(say('drafts.drafted', { songs: drafts.length, draft: seed }), (before) => (before === ride ? proposal : before)),
    aim,
    ...sayDraft(proposal, arc, drafts),
  }
}

/** Whether a ride has a song that nothing is planned for. */
export const canRoughIn = (ride: Ride): boolean => ride.sections.some(isOpen)

const NOTHING_KNOWN: ReadonlyMap<string, SongDrive> = new Map()

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
