import type { Ride } from '#plan/model.ts'
import { bikeInOrder } from './bikeInOrder.ts'
import { gridsRise } from './gridsRise.ts'
import { leadersExist } from './leadersExist.ts'
import { lengthsFitSection } from './lengthsFitSection.ts'
import { rangesRise } from './rangesRise.ts'
import { ridersInOrder } from './ridersInOrder.ts'
import type { Fault, Rule } from './rule.ts'
import { staysAClass } from './staysAClass.ts'
import { uniqueIds } from './uniqueIds.ts'

const ALL: readonly Rule[] = [bikeInOrder, gridsRise, leadersExist, lengthsFitSection, rangesRise, ridersInOrder, uniqueIds, staysAClass]

/** What is wrong between the values of a ride whose shape is right. */
export const checkRules = (ride: Ride): Fault[] => ALL.flatMap((rule) => rule(ride))
