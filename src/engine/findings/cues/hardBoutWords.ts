import type { Meaning } from '#engine/cues/claims/claim.ts'
import { claimsOf } from '#engine/cues/claims/claimsOf.ts'
import { countMembers, membersOf, nameOf } from '#engine/cues/family.ts'
import { tellsFeel } from '#engine/cues/feelWords.ts'
import { linesByBlock } from '#engine/cues/spokenOrder.ts'
import type { Facts } from '#engine/findings/facts.ts'
import { atBlock } from '#engine/findings/finding.ts'
import type { Bout } from '#engine/recovery/findBouts.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Cue } from '#plan/model.ts'
import { quotedItem } from '#plan/names.ts'
import type { Seconds } from '#units/units.ts'
import { say } from '#words/said.ts'
import { cueFix } from './atLine.ts'

const WHY = say('sources.ridersAsk')

/** What riders ask of a hard effort. */
type Asked = 'long' | 'many' | 'hard'

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
        text: say('checksCues.hardBoutWords', { block: quotedItem(played.block), missing }),
        why: WHY,
        amount: missing.length,
        fixes: () => [missing.includes('long') ? sayLength(facts, bout, heard) : undefined],
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

const aboutsOf = (cue: Cue, { ride }: Facts): Meaning['about'][] =>
  claimsOf(cue, ride.bike.unit, speechOf(ride)).map(({ meanings }) => meanings[0].about)

function missingWords(facts: Facts, bout: Bout, heard: Heard, toldBefore: (section: number) => Told): Asked[] {
  const first = facts.blocks[bout.fromBlock]!
  const own = heard.slice(bout.fromBlock, bout.toBlock + 1).flat()
  const said = new Set(own.flatMap(({ cue }) => aboutsOf(cue, facts)))
  for (const [about, block] of toldBefore(first.section)) if (block < bout.fromBlock) said.add(about)
  const missing: Asked[] = []
  const speech = speechOf(facts.ride)
  const { told } = speech
  if (!LASTING.some((about) => said.has(about)) && !own.some(({ cue }) => told.music(cue.text))) missing.push('long')
  if (!COUNTING.some((about) => said.has(about)) && comesAgain(facts, bout)) missing.push('many')
  const felt =
    first.block.feel !== undefined ||
    said.has('effort') ||
    own.some(({ cue }) => told.effort(cue.text) || tellsFeel(cue, speech)) ||
    told.effort(first.block.label ?? '')
  if (!felt) missing.push('hard')
  return missing
}

const LASTING = ['length', 'left'] as const
const COUNTING = ['ahead', 'more', 'last', 'place', 'rounds'] as const

/** Words of a block that is no work itself tell what comes. */
function isEasy({ blocks, rules }: Facts, block: number): boolean {
  const { effort } = blocks[block]!.block
  return Math.max(effort.from, effort.to) < rules.workEffort
}

function comesAgain({ ride, blocks, sections }: Facts, { fromBlock }: Bout): boolean {
  const played = blocks[fromBlock]!
  if (played.set && played.set.set.rounds > 1) return true
  const speech = speechOf(ride)
  const { kind, number } = nameOf(played, speech)
  const { from, to } = sections[played.section]!.blocks
  return number !== undefined && kind !== undefined && countMembers(membersOf(kind, blocks.slice(from, to), speech)) > 1
}

/** Adds the length to the block's announcement, to the nearest five seconds from twenty-five on. */
function sayLength(facts: Facts, bout: Bout, heard: Heard): Fix | undefined {
  const line = heard[bout.fromBlock]!.find(({ moment }) => moment === 'announce')
  if (line === undefined) return undefined
  const seconds = bout.to - bout.from
  const words = speechOf(facts.ride).sentences.length(rounded(seconds))
  const text = `${line.cue.text.trim()} ${words[0]!.toUpperCase()}${words.slice(1)}.`
  const done = say('checksCues.saidHowLong', { block: quotedItem(facts.blocks[bout.fromBlock]!.block) })
  return cueFix(facts, line, say('checksCues.say', { words }), done, { text })
}

const rounded = (seconds: Seconds): Seconds => (seconds >= 25 ? Math.round(seconds / 5) * 5 : Math.max(1, Math.round(seconds)))
