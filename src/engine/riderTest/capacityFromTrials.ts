import type { Trial } from '#plan/riderModel.ts'
import type { Seconds, Watts } from '#units/units.ts'
import { isUnusual, type TestResult } from './capacity.ts'
import { straightLine } from './straightLine.ts'

/** What speaks against the trials, though they give a result. */
export type TrialDoubt =
  | { kind: 'short' | 'long'; trial: Trial }
  /** The longest is shorter than ten minutes. */
  | { kind: 'allShort'; longest: Seconds }
  /** The longest is less than twice the shortest. */
  | { kind: 'alike'; shortest: Seconds; longest: Seconds }
  /** No line goes through them: how much it explains, and critical power by each way of drawing it. */
  | { kind: 'apart'; explained: number; byWork: Watts; byPower: Watts }
  | { kind: 'onlyTwo' }
  | { kind: 'unusual'; wPrime: number }

/** Why there is no result. `notFalling`: a longer trial had as many watts as a shorter one. */
export type TrialRefusal = 'tooFew' | 'sameLength' | 'notFalling'

/** Lengths between which power and time lie on a hyperbola. Source: Drake, Finke, Ferguson, Eur J Appl Physiol 2024;124(2):507-526. */
const SHORTEST: Seconds = 120
const LONGEST: Seconds = 900
/** Trials all shorter than this give too much. Source: Mattioni Maturana F et al., J Sci Med Sport 2018;21(7):742-747. */
const LONG_ENOUGH: Seconds = 600
/** Lowest share explained among Moritani's sixteen riders. */
const EXPLAINED = 0.98
/** Standard error, as a share of critical power, beyond which trials do not agree; about what Karsten B et al., Eur J Appl Physiol 2015;115:197-204 found between ways of testing (4.5 to 5.8 %). */
const APART = 0.05

/**
 * Critical power and W′ from two or more all-out trials: the work done is W′ + CP × time, a straight line whose slope is
 * critical power, fitted by least squares with its standard errors. Two trials give it in closed form. The other usual
 * line, power over 1 ÷ time, weighs short trials more; where the two part, or the line explains too little, the trials do
 * not agree.
 *
 * Source: Monod H, Scherrer J, Ergonomics 1965;8:329-338; for cycling, with 0.982 < r² < 0.998, Moritani T, Nagata A,
 * deVries HA, Muro M, Ergonomics 1981;24:339-350.
 *
 * @param trials how long each was held and its mean power, in any order
 */
export function capacityFromTrials(trials: readonly Trial[]): TestResult<TrialDoubt, TrialRefusal> {
  if (trials.length < 2) return { ok: false, reason: 'tooFew' }
  const byWork = straightLine(trials.map(({ seconds, watts }) => [seconds, watts * seconds]))
  const byPower = straightLine(trials.map(({ seconds, watts }) => [1 / seconds, watts]))
  if (!byWork || !byPower) return { ok: false, reason: 'sameLength' }
  const [criticalPower, wPrime] = [byWork.slope, byWork.intercept]
  const least = Math.min(...trials.map(({ watts }) => watts))
  if (!(wPrime > 0 && criticalPower > 0 && criticalPower < least)) return { ok: false, reason: 'notFalling' }
  const { slopeError, interceptError, explained } = byWork
  const error = slopeError === null || interceptError === null ? null : { criticalPower: slopeError, wPrime: interceptError }
  const isApart = explained < EXPLAINED || (error !== null && error.criticalPower > APART * criticalPower)
  const doubts: TrialDoubt[] = [
    ...lengthDoubts(trials),
    ...(isApart ? [{ kind: 'apart', explained, byWork: criticalPower, byPower: byPower.intercept } as const] : []),
    ...(trials.length === 2 ? [{ kind: 'onlyTwo' } as const] : []),
    ...(isUnusual({ wPrime }) ? [{ kind: 'unusual', wPrime } as const] : []),
  ]
  return { ok: true, capacity: { criticalPower, wPrime, error }, doubts }
}

function lengthDoubts(trials: readonly Trial[]): TrialDoubt[] {
  const lengths = trials.map(({ seconds }) => seconds)
  const [shortest, longest] = [Math.min(...lengths), Math.max(...lengths)]
  return [
    ...trials.filter(({ seconds }) => seconds < SHORTEST).map((trial) => ({ kind: 'short', trial }) as const),
    ...trials.filter(({ seconds }) => seconds > LONGEST).map((trial) => ({ kind: 'long', trial }) as const),
    ...(longest < LONG_ENOUGH ? [{ kind: 'allShort', longest } as const] : []),
    ...(longest < 2 * shortest ? [{ kind: 'alike', shortest, longest } as const] : []),
  ]
}
