import type { Meaning } from '#engine/cues/claims/claim.ts'
import { claimsOf } from '#engine/cues/claims/claimsOf.ts'
import { countMembers, membersOf, nameOf } from '#engine/cues/family.ts'
import { tellsFeel } from '#engine/cues/feelWords.ts'
import { linesByBlock } from '#engine/cues/spokenOrder.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { atBlock, inQuotes } from '#engine/findings/finding.ts'
import { numberWords } from '#engine/ledger/numberWords.ts'
import type { Bout } from '#engine/recovery/findBouts.ts'
import type { Finding, Fix } from '#engine/report.ts'
import type { Cue } from '#plan/model.ts'
import { joinWords } from '#plan/names.ts'
import type { Seconds } from '#units/units.ts'
import { cueFix } from './atLine.ts'

const WHY = 'common practice; how long, how many and how hard is what riders ask'
/** A length in music instead of time, and words that say how hard. */
const MUSICAL = /\b(?:counts?|bars?|measures?|phrases?|eights?|sixes|chorus|verse|bridge|break|drop|(?:whole|rest of the) song)\b/i
const EFFORT =
  /\b(?:hard|harder|strong|heavy|push|surge|sprint|attack|climb|go|own it|all out|everything|effort|of ten|breathless|rise|up|summit|finish|home)\b/i

/** Hard bouts that riders go into without knowing how long, how many or how hard. */
export function hardBoutWords(facts: Facts): Finding[] {
  const heard = linesByBlock(facts)
  const toldBefore = tellsBefore(facts, heard)
  return facts.recovery.bouts.flatMap((bout) => {
    const played = facts.blocks[bout.fromBlock]!
    const missing = missingWords(facts, bout, heard, toldBefore)
    if (missing.length === 0) return []
    return [
      atBlock(facts, bout.fromBlock, {
        rule: 'hardBoutWords',
        severity: 'hint',
        text: `${inQuotes(played.block)} is hard and the words do not say ${joinWords(missing)}.`,
        why: WHY,
        amount: missing.length,
        fixes: () => [missing.includes('how long') ? sayLength(facts, bout, heard) : undefined],
      }),
    ]
  })
}

type Heard = ReturnType<typeof linesByBlock>

/** What is told of something in a section, and the first block in which it is. */
type Told = ReadonlyMap<Meaning['about'], number>

/** What the words of a section tell of what comes: previews, and what is said where riders can listen. Each section is read once. */
function tellsBefore(facts: Facts, heard: Heard): (section: number) => Told {
  const known = new Map<number, Told>()
  return (section) => {
    const told = known.get(section) ?? readSection(facts, heard, section)
    known.set(section, told)
    return told
  }
}

function readSection(facts: Facts, heard: Heard, section: number): Told {
  const told = new Map<Meaning['about'], number>()
  const { from, to } = facts.sections[section]!.blocks
  for (let block = from; block < to; block++) {
    const easy = isEasy(facts, block)
    for (const { cue, moment } of heard[block]!) {
      if (!easy && moment !== 'preview') continue
      for (const about of aboutsOf(cue, facts)) if (!told.has(about)) told.set(about, block)
    }
  }
  return told
}

const aboutsOf = (cue: Cue, { ride }: Facts): Meaning['about'][] => claimsOf(cue, ride.bike.unit).map(({ meanings }) => meanings[0].about)

function missingWords(facts: Facts, bout: Bout, heard: Heard, toldBefore: (section: number) => Told): string[] {
  const first = facts.blocks[bout.fromBlock]!
  const own = heard.slice(bout.fromBlock, bout.toBlock + 1).flat()
  const said = new Set(own.flatMap(({ cue }) => aboutsOf(cue, facts)))
  for (const [about, block] of toldBefore(first.section)) if (block < bout.fromBlock) said.add(about)
  const missing: string[] = []
  if (!LASTING.some((about) => said.has(about)) && !own.some(({ cue }) => MUSICAL.test(cue.text))) missing.push('how long')
  if (!COUNTING.some((about) => said.has(about)) && comesAgain(facts, bout)) missing.push('how many')
  const felt =
    first.block.feel !== undefined ||
    said.has('effort') ||
    own.some(({ cue }) => EFFORT.test(cue.text) || tellsFeel(cue)) ||
    EFFORT.test(first.block.label ?? '')
  if (!felt) missing.push('how hard')
  return missing
}

const LASTING = ['length', 'left'] as const
const COUNTING = ['ahead', 'more', 'last', 'place', 'rounds'] as const

/** Words of a block that is no work itself tell what comes. */
function isEasy({ blocks, rules }: Facts, block: number): boolean {
  const { effort } = blocks[block]!.block
  return Math.max(effort.from, effort.to) < rules.workEffort
}

function comesAgain({ blocks, sections }: Facts, { fromBlock }: Bout): boolean {
  const played = blocks[fromBlock]!
  if (played.set && played.set.set.rounds > 1) return true
  const { kind, number } = nameOf(played)
  const { from, to } = sections[played.section]!.blocks
  return number !== undefined && kind !== undefined && countMembers(membersOf(kind, blocks.slice(from, to))) > 1
}

/** Adds the length to the block's announcement, to the nearest five seconds from twenty-five on. */
function sayLength(facts: Facts, bout: Bout, heard: Heard): Fix | undefined {
  const line = heard[bout.fromBlock]!.find(({ moment }) => moment === 'announce')
  if (line === undefined) return undefined
  const seconds = bout.to - bout.from
  const words = sayRounded(seconds)
  const text = `${line.cue.text.trim()} ${words[0]!.toUpperCase()}${words.slice(1)}.`
  return cueFix(facts, line, `Say “${words}”`, `Told how long ${inQuotes(facts.blocks[bout.fromBlock]!.block)} is`, { text })
}

function sayRounded(seconds: Seconds): string {
  const rounded = seconds >= 25 ? Math.round(seconds / 5) * 5 : Math.max(1, Math.round(seconds))
  if (rounded % 60 === 0) return rounded === 60 ? 'one minute' : `${numberWords(rounded / 60)} minutes`
  return `${numberWords(rounded)} ${rounded === 1 ? 'second' : 'seconds'}`
}
