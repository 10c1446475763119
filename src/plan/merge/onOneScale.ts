import { setBike } from '#plan/commands/setBike.ts'
import { setDatum } from '#plan/commands/setDatum.ts'
import type { Bike, Ride } from '#plan/model.ts'
import type { Decisions } from './decisions.ts'
import { originOf } from './threeWay.ts'
import { withUntouchedSteps } from './withUntouchedSteps.ts'

/** The common base, where it is known, and the two rides made of it. */
export interface Three {
  base: Ride | null
  mine: Ride
  theirs: Ride
}

/**
 * The three rides on one bike and counted from one datum. Changing either writes every step
 * anew, in the same way for all three, so that afterwards only those steps differ that
 * somebody set. Without a base the ride whose bike it is stands for it.
 */
export function onOneScale({ base, mine, theirs }: Three, decisions: Decisions): Three {
  const bike = decide<Bike>('bike')
  const datum = decide<Ride['datum']>('datum')
  const before = base ?? (bike === theirs.bike ? theirs : mine)
  const read = (ride: Ride, scale: Pick<Ride, 'bike' | 'datum'>): Ride => setDatum(scale.datum).apply(setBike(ride, scale.bike).apply(ride))
  const convert = (ride: Ride): Ride => {
    const here = read(ride, { bike, datum })
    const isAsItWas = ride === before || (ride.bike.stepsPerUnit === bike.stepsPerUnit && ride.datum === datum)
    return isAsItWas ? here : withUntouchedSteps({ ride, here, before: read(before, ride), beforeHere: read(before, { bike, datum }) })
  }
  return { base: base && convert(base), mine: convert(mine), theirs: convert(theirs) }

  function decide<Value>(field: 'bike' | 'datum'): Value {
    const values = { base: base?.[field], mine: mine[field], theirs: theirs[field] }
    const by = originOf(values.base, values.mine, values.theirs)
    if (by === 'none') return mine[field] as Value
    const difference = { kind: 'field' as const, of: 'ride' as const, id: `ride ${field}`, by, place: {}, field, ...values }
    if (by === 'both') decisions.note(difference)
    return (by === 'both' || decisions.decide(difference) === 'mine' ? mine : theirs)[field] as Value
  }
}
