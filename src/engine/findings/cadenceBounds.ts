import { paceRange } from '#engine/cadence/paceRange.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Finding, Fix } from '#engine/report.ts'
import { quotedItem } from '#plan/names.ts'
import { isOutOfSaddle } from '#plan/posture.ts'
import type { Rpm } from '#units/units.ts'
import { say } from '#words/said.ts'
import type { Facts } from './facts.ts'
import { eachBlock, type Noticed, playsOf } from './finding.ts'
import { blockFix } from './fixes/blockFix.ts'

const WHY = say('sources.cadenceBounds')
/** A tempo that fills a bound exactly must not fall outside by a rounding error. */
const ROUNDING_RPM = 1e-6

interface Bounds {
  min: Rpm
  max: Rpm
}

/** Cadence outside what the posture allows. */
export function cadenceBounds(facts: Facts): Finding[] {
  return eachBlock(facts, (played) => judge(facts, played))
}

function judge(facts: Facts, played: PlayedBlock): Noticed | undefined {
  const { block, cadence } = played
  const bounds = boundsOf(facts, played)
  if (cadence.kind !== 'turning' || !bounds) return undefined
  const outside = Math.max(bounds.min - cadence.least, cadence.most - bounds.max)
  if (outside <= ROUNDING_RPM) return undefined
  const [from, to] = paceRange(cadence)
  return {
    rule: 'cadenceBounds',
    severity: 'warning',
    text: say('checksRiding.cadenceBounds', {
      block: quotedItem(block),
      seat: isOutOfSaddle(block) ? 'standing' : 'seated',
      rpm: { from, to },
      usual: { from: bounds.min, to: bounds.max },
    }),
    why: WHY,
    amount: outside,
    fixes: block.cadence ? [stayInside(played, bounds)] : [otherStrikes(facts, played, bounds), sitDown(facts, played)],
  }
}

function boundsOf({ rules }: Facts, { block }: PlayedBlock): Bounds | undefined {
  if (block.posture === 'offBike') return undefined
  return isOutOfSaddle(block)
    ? { min: rules.standingMinRpm, max: rules.standingMaxRpm }
    : { min: rules.seatedMinRpm, max: rules.seatedMaxRpm }
}

function stayInside({ block }: PlayedBlock, { min, max }: Bounds): Fix | undefined {
  if (!block.cadence || block.cadence === 'legsStill' || min > max) return undefined
  const inside = (rpm: Rpm): Rpm => Math.min(max, Math.max(min, rpm))
  const { rpm, rampTo } = block.cadence
  const next = { rpm: inside(rpm), ...(rampTo !== undefined && { rampTo: inside(rampTo) }) }
  const pace = { from: next.rpm, to: next.rampTo ?? next.rpm }
  return blockFix(block, say('checks.rideAt', pace), say('checks.setCadence', { block: quotedItem(block), ...pace }), { cadence: next })
}

const STRIKES = [0.5, 1, 2] as const

/** Half or double time, where that brings the legs inside whenever the block is played. */
function otherStrikes(facts: Facts, played: PlayedBlock, bounds: Bounds): Fix | undefined {
  const { block, section, strikesPerBeat } = played
  if (strikesPerBeat === null || facts.sections[section]!.bpm === undefined) return undefined
  const plays = playsOf(facts, played)
  const strokes = STRIKES.find((each) => each !== strikesPerBeat && plays.every((play) => isInside(play, bounds, each / strikesPerBeat)))
  if (strokes === undefined) return undefined
  const done = say('checksRiding.putStrokes', { block: quotedItem(block), strokes })
  return blockFix(block, say('checksRiding.rideStrokes', { strokes }), done, { strikesPerBeat: strokes })
}

/** Too fast to stand on, but not to sit on. */
function sitDown(facts: Facts, played: PlayedBlock): Fix | undefined {
  const { block } = played
  const seated = { min: facts.rules.seatedMinRpm, max: facts.rules.seatedMaxRpm }
  if (block.posture === 'seated' || !playsOf(facts, played).every((play) => isInside(play, seated, 1))) return undefined
  const hands = block.hands === 'ends' ? { hands: 'wide' as const } : {}
  const done = say('checks.madeSeated', { block: quotedItem(block) })
  return blockFix(block, say('checksRiding.rideSeated'), done, { posture: 'seated', ...hands })
}

/** Whether a cadence times a factor stays within bounds. */
function isInside({ cadence }: PlayedBlock, { min, max }: Bounds, times: number): boolean {
  if (cadence.kind !== 'turning') return false
  const slow = cadence.least * times
  const fast = cadence.most * times
  return slow >= min - ROUNDING_RPM && fast <= max + ROUNDING_RPM
}
