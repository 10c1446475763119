import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import type { Arc } from '#engine/roughIn/arc.ts'
import type { Random } from '#engine/roughIn/seededRandom.ts'
import { type Block, isSet, type Option, type Ride, type Section } from '#plan/model.ts'
import { makeDeck } from './deck.ts'
import { feelOf } from './feels.ts'
import { labelled } from './labels.ts'
import { mended } from './mended.ts'
import { optionsOf } from './options.ts'
import { type Passage, passagesOf } from './passage.ts'
import { speak } from './speak.ts'
import { beginSpeaking, type Spoken } from './speaking.ts'
import type { Voice } from './voice.ts'
import { voiceOf } from './voiceOf.ts'

/**
 * The words of drafted songs, written from what is ridden in them: what each block is called, its calls with resistance,
 * posture, length, and effort, count-ins, form points, options, and what comes next. Nothing of the riding is changed, and
 * nothing of the songs that were not drafted. No wording comes twice before the others of its kind have come; the same
 * random numbers give the same words. What does not fit its moment is said shorter or left out. Cost: two to six
 * computations of the ride.
 *
 * @param ride after its repairs
 * @param drafted ids of the sections that were drafted
 * @param arc what each section is for
 */
export function writeWords(ride: Ride, drafted: ReadonlySet<string>, random: Random, arc: Pick<Arc, 'places'>): Ride {
  const voice = voiceOf(ride)
  const silent = withSections(ride, drafted, (section) => silenced(section, voice))
  const rules = constantsOf(silent)
  const report = computeRide(silent)
  const passages = passagesOf(
    silent,
    report,
    rules,
    arc.places.map(({ role }) => role),
  )
  const deck = makeDeck(random)
  const mine = passages.filter(({ section }) => drafted.has(silent.sections[section]!.id))
  const dressed = new Map(mine.map((passage) => [passage.block.id, dressing(passage, silent, deck, voice)]))
  const speaking = beginSpeaking(silent, report, rules, mine, deck, voice)
  speak(speaking)
  const whole = withSections(silent, drafted, (section) => eachBlock(section, (block) => ({ ...block, ...dressed.get(block.id) })))
  return mended(whole, speaking.spoken, withCues)
}

type Dressing = { feel?: string; easier?: Option; harder?: Option }

function dressing(passage: Passage, ride: Ride, deck: ReturnType<typeof makeDeck>, voice: Voice): Dressing {
  const feel = feelOf(passage, deck, voice)
  return { ...(feel !== undefined && { feel }), ...optionsOf(passage, ride, deck, voice) }
}

/** Labels from the blocks, and no words yet. */
const silenced = (section: Section, voice: Voice): Section =>
  eachBlock({ ...section, blocks: labelled(section, voice) }, ({ feel: _, easier: __, harder: ___, ...block }) => ({ ...block, cues: [] }))

const withCues = (ride: Ride, spoken: readonly Spoken[]): Ride => {
  const byBlock = new Map<string, Spoken[]>()
  for (const one of spoken) byBlock.set(one.blockId, [...(byBlock.get(one.blockId) ?? []), one])
  const ids = new Set(byBlock.keys())
  const sections = ride.sections.map((section) =>
    section.blocks.some((item) => (isSet(item) ? item.parts : [item]).some(({ id }) => ids.has(id)))
      ? eachBlock(section, (block) => {
          const own = byBlock.get(block.id)
          return own ? { ...block, cues: own.toSorted((a, b) => a.order - b.order).map(({ cue }) => cue) } : block
        })
      : section,
  )
  return { ...ride, sections }
}

const withSections = (ride: Ride, drafted: ReadonlySet<string>, change: (section: Section) => Section): Ride => ({
  ...ride,
  sections: ride.sections.map((section) => (drafted.has(section.id) ? change(section) : section)),
})

const eachBlock = (section: Section, change: (block: Block) => Block): Section => ({
  ...section,
  blocks: section.blocks.map((item) => (isSet(item) ? { ...item, parts: item.parts.map(change) } : change(item))),
})
