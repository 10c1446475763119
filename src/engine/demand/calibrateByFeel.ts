import type { Bike } from '#plan/model.ts'
import type { Rider } from '#plan/riderModel.ts'
import type { Rpm, Setting, Watts } from '#units/units.ts'
import { brakeLawOf, speedFactor } from './brakeLaw.ts'
import { type BrakeGuess, guessBrake, type Round } from './calibrateBrake.ts'
import { calibrationOf } from './calibration.ts'
import { withCarriedPoints } from './carriedPoints.ts'
import { effortOfFeel, FEEL_LADDER, type Feel, wattsForEffort } from './feelLadder.ts'
import { risingPoints } from './risingPoints.ts'
import { settingForWatts } from './settingForWatts.ts'
import { withGuess } from './withGuess.ts'

/** Where each feel was found at one cadence; feels not found are left out. */
export interface FeelRound {
  rpm: Rpm
  found: readonly { feel: Feel; setting: Setting }[]
}

export type FeelCalibration =
  | { ok: true; bike: Bike; guess: BrakeGuess; carried: Setting[] }
  /** `tooFew`: fewer than two settings; `upsideDown`: nowhere did a heavier feel need a higher setting. */
  | { ok: false; reason: 'tooFew' | 'upsideDown' }

/**
 * A bike calibrated without a console, by what it feels like at one or two cadences.
 *
 * A feel stands for an effort, an effort for a share of the rider's oxygen reserve, that for
 * watts: the engine's demand mapping read backwards. At two cadences the same feel lies at two
 * settings, which also tells how the brake answers to cadence; undecided, the bike keeps its own. All watts are brought to the bike's reference cadence by the brake's law, joined to
 * rising points, and continued beyond the feels in proportion to the old points. The base and
 * the feel anchors follow from the new curve.
 *
 * Rough by nature: feels are taken to depend on power alone, and the rider to be the modelled
 * one. A wrong oxygen uptake scales all watts alike; demand for that rider then still comes
 * out as felt.
 *
 * @param rider who found the settings; their base lies `baseOffset` from the bike's
 * @param rounds one or two
 */
export function calibrateByFeel(bike: Bike, rider: Rider, rounds: readonly FeelRound[]): FeelCalibration {
  const measured = rounds.map((round) => inWatts(round, rider))
  const [one, other] = measured
  const guess: BrakeGuess =
    one && other ? guessBrake(one, other, bike.referenceRpm) : { brake: null, fit: null, exponent: null, comparisons: 0 }
  const braked = withGuess(bike, guess)
  const rising = risingPoints(measured.flatMap((round) => atReference(round, braked)))
  if (rising.length < 2) return { ok: false, reason: 'tooFew' }
  if (rising.at(-1)![1] <= rising[0]![1]) return { ok: false, reason: 'upsideDown' }
  const { points, carried } = withCarriedPoints(rising, bike)
  const found = new Set(rounds.flatMap((round) => round.found.map(({ feel }) => feel)))
  return { ok: true, bike: anchored({ ...braked, points, calibration: 'feel' }, rider, found), guess, carried }
}

const inWatts = ({ rpm, found }: FeelRound, rider: Rider): Round => ({
  rpm,
  readings: found.map(({ feel, setting }) => ({ setting, watts: wattsForEffort(effortOfFeel(feel), rider, rpm) })),
})

function atReference({ rpm, readings }: Round, bike: Bike) {
  const factor = speedFactor(brakeLawOf(bike), rpm / bike.referenceRpm)
  return readings.map(({ setting, watts }) => ({ setting, watts: watts / factor }))
}

/** The bike with its base and feel anchors where the new curve has them, in whole steps. */
function anchored(bike: Bike, rider: Rider, found: ReadonlySet<Feel>): Bike {
  const settingOf = (watts: Watts): Setting | null => {
    const setting = settingForWatts(calibrationOf(bike), watts)
    return setting === null ? null : inSteps(setting, bike)
  }
  const anchors = FEEL_LADDER.filter(({ feel }) => found.has(feel)).flatMap(({ feel, effort }) => {
    const setting = settingOf(wattsForEffort(effort, rider, bike.referenceRpm))
    return setting === null ? [] : [{ feel, setting }]
  })
  const others = (bike.feelAnchors ?? []).filter((anchor) => !anchors.some(({ feel }) => feel === anchor.feel))
  const base = anchors.find(({ feel }) => feel === 'base')?.setting
  return {
    ...bike,
    ...(base !== undefined && { base: inSteps(base - rider.baseOffset, bike) }),
    feelAnchors: [...others, ...anchors].sort((a, b) => a.setting - b.setting),
  }
}

/** The nearest whole step inside the bike's range. */
function inSteps(setting: Setting, { min = 0, max, stepsPerUnit }: Bike): Setting {
  return Math.min(max, Math.max(min, Math.round(setting * stepsPerUnit) / stepsPerUnit))
}
