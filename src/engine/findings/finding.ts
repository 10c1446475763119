import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix, Severity } from '#engine/report.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import type { Ride, Section } from '#plan/model.ts'
import { quotedItem, quotedSectionName } from '#plan/names.ts'
import type { Counts, Seconds } from '#units/units.ts'
import { type Said, say, type Text } from '#words/said.ts'
import type { Facts } from './facts.ts'
import type { RuleName } from './ruleNames.ts'

/** One rule: what it notices of a ride. */
export type Rule = (facts: Facts) => Finding[]

/** What a rule says, before it is given its place. Repairs that take work are handed over as how to make them. */
export type Noticed = Pick<Finding, 'rule' | 'severity' | 'text' | 'why' | 'amount'> & {
  /** Whom it is about, where one place can have one of each. */
  of?: string
  fixes?: Proposals | (() => Proposals)
}
type Proposals = readonly (Fix | undefined)[]

export const COMMON_PRACTICE = say('sources.commonPractice')
export const ARITHMETIC = say('sources.arithmetic')

/** A finding about one played block, at its start unless another moment is given. */
export function atBlock({ blocks }: Facts, index: number, noticed: Noticed, at = blocks[index]!.from, place?: string): Finding {
  const { block, sectionId } = blocks[index]!
  return new Proposed(noticed, place ?? block.id, at, sectionId, block.id, index)
}

/** A finding about a section, pointing at its count one unless another moment is given, and at a block of it where one is meant. */
export function atSection({ sections }: Facts, index: number, noticed: Noticed, at = sections[index]!.one, of?: PlayedBlock): Finding {
  const { sectionId } = sections[index]!
  return new Proposed(noticed, sectionId, at, sectionId, of?.block.id, of?.index)
}

/** A finding about the ride as a whole. */
export const ofRide = (noticed: Noticed, at = 0): Finding => new Proposed(noticed, 'ride', at)

/** What every finding tells, field by field: a class, since hundreds are made while a block is dragged. */
export abstract class Told {
  readonly id: string
  readonly rule: RuleName
  readonly severity: Severity
  readonly text: Said
  readonly why: Said
  readonly at: Seconds
  readonly sectionId?: string | undefined
  readonly blockId?: string | undefined
  readonly block?: number | undefined
  readonly amount?: number | undefined

  constructor(told: Pick<Finding, 'rule' | 'severity' | 'text' | 'why' | 'amount'>, id: string, at: Seconds, place: Pointer) {
    this.id = id
    this.rule = told.rule
    this.severity = told.severity
    this.text = told.text
    this.why = told.why
    this.at = at
    this.sectionId = place.sectionId
    this.blockId = place.blockId
    this.block = place.block
    this.amount = told.amount
  }
}

/** Where a finding points. */
type Pointer = Pick<Finding, 'sectionId' | 'blockId' | 'block'>

/** A finding with its repairs untried, and not even made before somebody asks. */
class Proposed extends Told implements Finding {
  readonly #fixes: Noticed['fixes']
  #made: readonly Fix[] | undefined

  constructor(noticed: Noticed, place: string, at: Seconds, sectionId?: string, blockId?: string, block?: number) {
    super(noticed, `${noticed.of === undefined ? noticed.rule : `${noticed.rule}.${noticed.of}`}:${place}`, at, {
      sectionId,
      blockId,
      block,
    })
    this.#fixes = noticed.fixes
  }

  get proposed(): readonly Fix[] {
    this.#made ??= made(this.#fixes)
    return this.#made
  }

  get fixes(): readonly Fix[] {
    return this.proposed
  }
}

const made = (fixes: Noticed['fixes'] = NONE): readonly Fix[] =>
  (typeof fixes === 'function' ? fixes() : fixes).filter((fix) => fix !== undefined)

const NONE: readonly Fix[] = []

/** A repair: its name in the imperative, its name once done, and what it changes. */
export const fix = (label: Said, done: Said, apply: (ride: Ride) => Ride): Fix => ({ label, command: makeCommand(done, apply) })

/** Findings of a rule that looks at every played block by itself; blocks a crossfade swallows are passed over. */
export function eachBlock(facts: Facts, judge: (played: PlayedBlock) => Noticed | undefined): Finding[] {
  const found: Finding[] = []
  for (const played of facts.blocks) {
    const noticed = played.to > played.from ? judge(played) : undefined
    if (noticed) found.push(atBlock(facts, played.index, noticed))
  }
  return found
}

/** Every time a block is played: once, or in each round of its set. */
export function playsOf({ blocks }: Facts, played: PlayedBlock): PlayedBlock[] {
  const { set, index } = played
  if (!set) return [played]
  const { rounds, parts } = set.set
  const first = index - (set.round - 1) * parts.length
  return Array.from({ length: rounds }, (_, round) => blocks[first + round * parts.length]!)
}

/** A played block's name in quotes. */
export const quoted = ({ blocks }: Facts, index: number): Text => quotedItem(blocks[index]!.block)

/** A section's name in quotes; unquoted where it is only its place ("song 2"). */
export const quotedSection = ({ ride }: Facts, index: number): Text => quotedSectionName(ride, ride.sections[index]!)

/** An amount as the section measures it: "2 eights", "12 s". */
export const measured = (section: Section, amount: number, eight: Counts): Text =>
  section.song?.grid
    ? say('names.eights', { counts: Math.round(amount * 100) / 100, unit: eight })
    : say('names.seconds', { seconds: amount })
