import { paceOf } from '#engine/anotherBike/paceOf.ts'
import { type Line, sizeOfTurns, stepsOfTurns } from '#engine/anotherBike/stepsOfTurns.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { Bike, Section } from '#plan/model.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEights } from '#units/formatEights.ts'
import { formatSetting } from '#units/formatSetting.ts'
import type { Counts, KnobSteps } from '#units/units.ts'
import type { Facts } from './facts.ts'

/** A rule of turns over base, in whole steps over the base of the ride's bike at a played block's cadence. */
export const ruleAt = ({ ride: { bike } }: Pick<Facts, 'ride'>, played: PlayedBlock, turns: number, line: Line): KnobSteps =>
  stepsOfTurns(turns, bike, paceOf(played, bike.referenceRpm), line)

/** A rule about a size in turns: how much is added, how far riders are apart. */
export const sizeAt = ({ ride: { bike } }: Pick<Facts, 'ride'>, played: PlayedBlock, turns: number): KnobSteps =>
  sizeOfTurns(turns, bike, paceOf(played, bike.referenceRpm))

/** A size on the knob, written small with its unit: "¾ turn", "1½ turns", "2 levels". */
export function amountOfKnob(steps: KnobSteps, { unit, stepsPerUnit }: Pick<Bike, 'unit' | 'stepsPerUnit'>): string {
  const plural = steps > stepsPerUnit && /[a-rt-z]$/.test(unit)
  return `${formatSetting(steps, stepsPerUnit)} ${unit}${plural ? 's' : ''}`
}

/** A place on the knob: "¾ turn over base", "base", "2 levels under base". */
export function placeOverBase(steps: KnobSteps, bike: Pick<Bike, 'unit' | 'stepsPerUnit'>): string {
  return steps === 0 ? 'base' : `${amountOfKnob(Math.abs(steps), bike)} ${steps > 0 ? 'over' : 'under'} base`
}

/** An amount as the section measures it: "2 eights", "12 s". */
export const sayMeasured = (section: Section, amount: number, eight: Counts): string =>
  section.song?.grid ? formatEights(Math.round(amount * 100) / 100, eight) : formatDuration(amount)
