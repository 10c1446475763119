import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { nameOfSection } from '#plan/names.ts'
import { rolesOf, sectionShapes } from './shapeOf.ts'

/** What a class in another length keeps of its parent, each in one sentence with how it was. */
export function whatStays(parent: Ride, variant: Ride): string[] {
  const [old, now] = [computeRide(parent), computeRide(variant)]
  const [was, is] = [endsOf(old), endsOf(now)]
  const name = finishOf(variant)
  const finish = name && `Finish: “${name}”${name === finishOf(parent) ? ', as before' : ''}.`
  return [
    `Warm-up ${percent(is.warmUp)} of the class, was ${percent(was.warmUp)}.`,
    `Cool-down ${percent(is.coolDown)}, was ${percent(was.coolDown)}.`,
    ...(finish ? [finish] : []),
    `Shape: ${now.shape.name}${now.shape.name === old.shape.name ? ', as before' : `, was ${old.shape.name}`}; ${percent(now.overall.workShare)} of it is work, was ${percent(old.overall.workShare)}.`,
  ]
}

const percent = (share: number): string => `${Math.round(100 * share)} %`

/** The shares that the panel of a ride shows of it too. */
const endsOf = ({ measures: { warmUp, coolDown, riding } }: RideReport): { warmUp: number; coolDown: number } => ({
  warmUp: riding > 0 ? (warmUp ?? 0) / riding : 0,
  coolDown: riding > 0 ? coolDown / riding : 0,
})

function finishOf(ride: Ride): string | undefined {
  const rules = constantsOf(ride)
  const finish = ride.sections[rolesOf(sectionShapes(ride), rules.warmUpEffort, rules.coolDownEffort).indexOf('finish')]
  return finish && nameOfSection(ride, finish)
}
