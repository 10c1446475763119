import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { quotedSectionName } from '#plan/names.ts'
import { say, type Text } from '#words/said.ts'
import { rolesOf, sectionShapes } from './shapeOf.ts'

/** What a class in another length keeps of its parent, each in one sentence with how it was. */
export function whatStays(parent: Ride, variant: Ride): Text[] {
  const [old, now] = [computeRide(parent), computeRide(variant)]
  const [was, is] = [endsOf(old), endsOf(now)]
  const [finishWas, finish] = [finishOf(parent), finishOf(variant)]
  return [
    say('fit.staysWarmUp', { is: is.warmUp, was: was.warmUp }),
    say('fit.staysCoolDown', { is: is.coolDown, was: was.coolDown }),
    ...(finish ? [say('fit.staysFinish', { song: finish.name, same: finish.title === finishWas?.title })] : []),
    say('fit.staysShape', {
      is: now.shape.name,
      was: now.shape.name === old.shape.name ? null : old.shape.name,
      work: now.overall.workShare,
      workWas: old.overall.workShare,
    }),
  ]
}

/** The shares that the panel of a ride shows of it too. */
const endsOf = ({ measures: { warmUp, coolDown, riding } }: RideReport): { warmUp: number; coolDown: number } => ({
  warmUp: riding > 0 ? (warmUp ?? 0) / riding : 0,
  coolDown: riding > 0 ? coolDown / riding : 0,
})

/** The finish as it stands in a sentence, and its title to tell it by. */
function finishOf(ride: Ride): { name: Text; title: string } | undefined {
  const rules = constantsOf(ride)
  const finish = ride.sections[rolesOf(sectionShapes(ride), rules.warmUpEffort, rules.coolDownEffort).indexOf('finish')]
  return finish && { name: quotedSectionName(ride, finish), title: finish.title || finish.song?.title || finish.id }
}
