import { numberWords } from '#engine/ledger/numberWords.ts'
import { formatTotal } from '#engine/ledger/sayCall.ts'
import { placeWords, sizeWords } from '#engine/ledger/settingWords.ts'
import type { PlayedBlock } from '#engine/report.ts'
import { atTotal, isOpen, isSingle, type LedgerState, mayBeAt } from '#plan/ledger/ledgerState.ts'
import type { Bike, Cue, Resistance } from '#plan/model.ts'
import type { Effort, KnobSteps, Seconds } from '#units/units.ts'
import type { Claim } from './claim.ts'
import { claimsOf } from './claims.ts'
import { countMembers, membersOf, nameOf } from './family.ts'

/** A number a cue speaks that the plan does not bear out. */
export interface Mismatch {
  claim: Claim
  /** The words as they stand, and what the plan makes of them. */
  said: string
  planned: string
}

/** What claims are checked against. */
export interface ClaimContext {
  bike: Bike
  /** The played blocks of the cue's section. */
  section: readonly PlayedBlock[]
  /** Those of the section after it, which the words of a last block may be about. */
  next: readonly PlayedBlock[]
  /** The call of this very round. */
  call: Resistance
  workEffort: Effort
}

/** Every number the cue speaks that differs from the plan; what cannot be judged is left alone. */
export function checkClaims(cue: Cue, played: PlayedBlock, context: ClaimContext): Mismatch[] {
  const claims = claimsOf(cue, context.bike.unit)
  if (claims.length === 0) return []
  const early = cue.moment === 'preview' || cue.moment === 'form' || cue.moment === 'story'
  const changes = claims.filter(({ about }) => about === 'change')
  return claims.flatMap((claim) => {
    const about = early && claim.about !== 'seconds' && claim.about !== 'ahead' && claim.about !== 'rounds' ? null : claim
    const right = about && rightWords(about, played, context, changes.length)
    if (right === null) return []
    const said = cue.text.slice(claim.from, claim.to)
    return [{ claim, said, planned: right }]
  })
}

/** The words the plan calls for, or null where the claim holds or cannot be judged. */
function rightWords(claim: Claim, played: PlayedBlock, context: ClaimContext, changes: number): string | null {
  switch (claim.about) {
    case 'change':
      // Two changes in one call are a sequence; only their sum could be judged.
      return changes > 1 ? null : rightChange(claim.value, claim, played, context)
    case 'stay':
      return rightChange(0, { ...claim, verb: false }, played, context)
    case 'total':
      return rightTotal(claim, played, context)
    case 'seconds':
      return rightSeconds(claim, played, context)
    case 'rounds':
      return rightRounds(claim, played, context)
    case 'ahead':
    case 'left':
    case 'place':
      return rightCount(claim, played, context)
    case 'moveCounts':
    case 'each':
      return rightMove(claim, played)
  }
}

/** Whether a spoken amount is so many steps; thirds and sevenths are spoken to three places. */
const isSaid = (value: number, steps: KnobSteps, { stepsPerUnit }: Bike): boolean => Math.abs(value - steps / stepsPerUnit) < 0.0005 + 1e-9

function rightChange(value: number, { verb }: { verb: boolean }, { ledger }: PlayedBlock, { bike, call }: ClaimContext): string | null {
  if (call.kind === 'allOff') return value < 0 ? null : 'all off'
  const steps = call.kind === 'change' ? call.steps : ledger.after.nominal - ledger.before.nominal
  if (isSaid(value, steps, bike)) return null
  if (steps === 0) return 'same resistance'
  const size = sizeWords(Math.abs(steps), bike)
  if (!verb) return `${size} ${steps > 0 ? 'on' : 'off'}`
  return steps > 0 ? `add ${size}` : `take ${size} off`
}

type TotalClaim = Extract<Claim, { about: 'total' }>

function rightTotal(claim: TotalClaim, { ledger: { after } }: PlayedBlock, { bike }: ClaimContext): string | null {
  if (bearsOut(after, claim, bike)) return null
  const state = claim.low === claim.high && !isOpen(after) ? atTotal(after.nominal) : after
  return claim.figures ? formatTotal(state, bike) : stateWords(state, bike)
}

/** Whether riders may be told so: their one total, a total inside their range, or their range; of an open one any part. */
function bearsOut(after: LedgerState, { low, high }: TotalClaim, bike: Bike): boolean {
  const { stepsPerUnit } = bike
  if (high === null) return isSaid(low, after.low ?? after.nominal, bike)
  if (low === high) return isSaid(low, after.nominal, bike) || (!isSingle(after) && mayBeAt(after, low * stepsPerUnit))
  if (isOpen(after)) return mayBeAt(after, low * stepsPerUnit) && mayBeAt(after, high * stepsPerUnit)
  return isSaid(low, after.low!, bike) && isSaid(high, after.high!, bike)
}

/** "three", "three to four", "at least three", "at most three". */
function stateWords({ low, nominal, high }: LedgerState, bike: Bike): string {
  const words = (steps: KnobSteps) => placeWords(Math.abs(steps), bike)
  if (low === null) return high === null ? words(nominal) : `at most ${words(high)}`
  if (high === null) return `at least ${words(low)}`
  return low === high ? words(low) : `${words(low)} to ${words(high)}`
}

/** A spoken time may be off by a tenth, or by three seconds: people round. */
const spokenFits = (said: Seconds, real: Seconds): boolean => Math.abs(said - real) <= Math.max(3, real / 10)

function rightSeconds(claim: Claim & { about: 'seconds' }, played: PlayedBlock, context: ClaimContext): string | null {
  const lengths = lengthsMeant(played, context)
  const fits = (real: Seconds): boolean => {
    if (claim.bound === 'under') return real <= claim.value + 3
    if (claim.bound === 'over') return real >= claim.value - 3
    return claim.bound === 'near' ? Math.abs(claim.value - real) <= Math.max(8, real / 5) : spokenFits(claim.value, real)
  }
  return lengths.some(fits) ? null : sayRounded(lengths[0]!, claim)
}

/** The lengths a spoken time may be about: the block, the unbroken work it begins, and before work all that follows in the section. */
function lengthsMeant(played: PlayedBlock, { section, next: following, workEffort }: ClaimContext): Seconds[] {
  const lengths = [played.to - played.from]
  const first = section[0]!.index
  let end = played.to
  let working = works(played, workEffort)
  const before = !working
  for (let i = played.index + 1 - first; i < section.length; i++) {
    const next = section[i]!
    working = working && works(next, workEffort)
    if (working) {
      end = next.to
      lengths.push(end - played.from)
    }
    if (before) lengths.push(next.to - next.from)
    else if (!working) break
  }
  const isLast = section.at(-1)!.index === played.index
  if (before && isLast) lengths.push(...following.map(({ from, to }) => to - from))
  return lengths
}

const works = ({ block }: PlayedBlock, level: Effort): boolean => Math.max(block.effort.from, block.effort.to) >= level

function sayRounded(seconds: Seconds, { figures, bare }: Claim & { about: 'seconds' }): string {
  const rounded = seconds >= 25 ? Math.round(seconds / 5) * 5 : Math.max(1, Math.round(seconds))
  if (bare) return figures ? String(rounded) : numberWords(rounded)
  const minutes = rounded / 60
  if (Number.isInteger(minutes)) return `${figures ? minutes : numberWords(minutes)} ${minutes === 1 ? 'minute' : 'minutes'}`
  return figures ? `${rounded} seconds` : `${numberWords(rounded)} seconds`
}

const sayNumber = (value: number, { figures }: Claim): string => (figures ? String(value) : numberWords(value))

function rightRounds(claim: Claim & { about: 'rounds' }, played: PlayedBlock, { section }: ClaimContext): string | null {
  const set = played.set?.set ?? section.find(({ index, set: next }) => index > played.index && next)?.set?.set
  return set === undefined || set.rounds === claim.value ? null : `${sayNumber(set.rounds, claim)} ${set.rounds === 1 ? 'round' : 'rounds'}`
}

type Counting = Extract<Claim, { about: 'ahead' | 'left' | 'place' }>

function rightCount(claim: Counting, played: PlayedBlock, context: ClaimContext): string | null {
  if (claim.about === 'place') return rightPlace(claim, played)
  const kind = claim.kind ?? kindMeant(played, context)
  if (kind === undefined) return null
  if (kind === 'round' || (claim.kind === undefined && played.set !== undefined)) return rightRoundsLeft(claim, played)
  const here = membersOf(kind, context.section)
  const isLast = context.section.at(-1)!.index === played.index
  const members = here.length === 0 && isLast ? membersOf(kind, context.next) : here
  const own = members.find(({ from, to }) => from <= played.index && played.index <= to)
  const later = members.filter(({ from }) => from > (own?.to ?? played.index))
  if (members.length === 0 || (own === undefined && later.length === 0)) return null
  if (claim.about === 'ahead') {
    const count = countMembers(own ? [own, ...later] : later)
    return count === claim.value ? null : `${sayNumber(count, claim)} ${count === 1 ? kind : pluralOf(kind)}`
  }
  const left = countMembers(later)
  // Before a row "last push" is the one to come; inside it, this one.
  const holds = claim.value === 0 ? left === (own ? 0 : 1) : left === claim.value
  return holds ? null : leftWords(left, claim.kind, claim)
}

function rightPlace(claim: Claim & { about: 'place' }, played: PlayedBlock): string | null {
  const { words, number } = nameOf(played)
  if (claim.kind === 'round' && played.set) {
    return played.set.round === claim.value || played.set.set.rounds > 1 ? null : 'round one'
  }
  if (number === undefined || number === claim.value || !words.includes(claim.kind)) return null
  return `${claim.kind} ${sayNumber(number, claim)}`
}

/** "last one" in a part that is played every round holds only in the last. */
function rightRoundsLeft(claim: Counting, { set }: PlayedBlock): string | null {
  if (set === undefined || claim.about !== 'left') return null
  const left = set.set.rounds - set.round
  return left === claim.value ? null : leftWords(left, undefined, claim)
}

function leftWords(left: number, kind: string | undefined, claim: Claim): string {
  if (left === 0) return `last ${kind ?? 'one'}`
  const noun = kind === undefined ? '' : ` ${left === 1 ? kind : pluralOf(kind)}`
  return `${sayNumber(left, claim)}${noun} left`
}

const pluralOf = (kind: string): string => (/(sh|ch|s|x)$/.test(kind) ? `${kind}es` : `${kind}s`)

/** What "last one" or "one left" is about: the block's own kind at work, else that of the work before it. */
function kindMeant(played: PlayedBlock, { section, workEffort }: ClaimContext): string | undefined {
  if (works(played, workEffort)) return nameOf(played).kind
  const before = section.findLast((other) => other.index < played.index && works(other, workEffort))
  return before && nameOf(before).kind
}

const COUNTED_WORDS: Record<number, string> = { 2: 'twos', 3: 'threes', 4: 'fours', 6: 'sixes', 8: 'eights', 16: 'sixteens' }

function rightMove(claim: Extract<Claim, { about: 'moveCounts' | 'each' }>, { block, countFrom, countTo }: PlayedBlock): string | null {
  const counts = block.move?.counts
  if (counts === undefined) return null
  if (claim.about === 'each') {
    const times = countFrom === undefined ? null : (countTo! - countFrom) / (2 * counts)
    return times === null || times === claim.value || !Number.isInteger(times) ? null : `${sayNumber(times, claim)} of each`
  }
  if (counts === claim.value) return null
  if (claim.pair) return `${sayNumber(counts, claim)} up, ${sayNumber(counts, claim)} down`
  return claim.figures ? `${counts}s` : (COUNTED_WORDS[counts] ?? `${numberWords(counts)} counts`)
}

/** A cue's text with every number put right. */
export function corrected(text: string, mismatches: readonly Mismatch[]): string {
  const fromLast = [...mismatches].sort((a, b) => b.claim.from - a.claim.from)
  return fromLast.reduce((words, { claim, planned }) => replaced(words, claim, planned), text)
}

/** The text with a claim's words replaced, its capital kept, and the article dropped where there was none. */
function replaced(text: string, { from, to }: Claim, words: string): string {
  const old = text.slice(from, to)
  const plain = /^an? /i.test(words) && !/^an? /i.test(old) ? words.replace(/^an? /i, '') : words
  const opens = /(?:^|[.!?]\s*)$/.test(text.slice(0, from))
  const capital = /^\p{Lu}/u.test(old) || (opens && /^[\d½⅓⅔¼¾]/.test(old))
  return `${text.slice(0, from)}${capital ? plain[0]!.toUpperCase() + plain.slice(1) : plain}${text.slice(to)}`
}
