import type { Rider } from '#plan/riderModel.ts'
import type { Quantity } from './quantities.ts'

/** A rider with a number typed or emptied; what a test found is assumed again once it is typed over. */
export function withNumber(rider: Rider, key: Quantity['key'], value: number | undefined): Rider {
  const { [key]: _before, ...others } = rider
  const next = (value === undefined ? others : { ...rider, [key]: value }) as Rider
  return key === 'criticalPower' || key === 'wPrime' ? withBasis(next, 'assumed') : next
}

/** A rider whose critical power and reserve are assumed, as they are unless it is said, or tested. */
export function withBasis(rider: Rider, basis: NonNullable<Rider['basis']>): Rider {
  const { basis: _before, ...others } = rider
  return basis === 'assumed' ? others : { ...others, basis }
}
