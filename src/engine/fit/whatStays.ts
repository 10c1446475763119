import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import type { Ride } from '#plan/model.ts'
import { nameOfSection } from '#plan/names.ts'
import { rolesOf, sectionShapes, shareOf } from './shapeOf.ts'

/** What a class in another length keeps of its parent, each in one sentence with how it was. */
export function whatStays(parent: Ride, variant: Ride): string[] {
  const [was, is] = [ends(parent), ends(variant)]
  const [old, now] = [computeRide(parent), computeRide(variant)]
  const finish = is.finish && `Finish: “${is.finish}”${is.finish === was.finish ? ', as before' : ''}.`
  return [
    `Warm-up ${percent(is.warmUp)} of the class, was ${percent(was.warmUp)}.`,
    `Cool-down ${percent(is.coolDown)}, was ${percent(was.coolDown)}.`,
    ...(finish ? [finish] : []),
    `Shape: ${now.shape.name}${now.shape.name === old.shape.name ? ', as before' : `, was ${old.shape.name}`}; ${percent(now.totals.workShare)} of it is work, was ${percent(old.totals.workShare)}.`,
  ]
}

const percent = (share: number): string => `${Math.round(100 * share)} %`

function ends(ride: Ride): { warmUp: number; coolDown: number; finish?: string } {
  const rules = constantsOf(ride)
  const shapes = sectionShapes(ride)
  const roles = rolesOf(shapes, rules.warmUpEffort, rules.coolDownEffort)
  const finish = ride.sections[roles.indexOf('finish')]
  return {
    warmUp: shareOf(shapes, roles, 'warmUp'),
    coolDown: shareOf(shapes, roles, 'coolDown'),
    ...(finish && { finish: nameOfSection(ride, finish) }),
  }
}
