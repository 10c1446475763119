import type { BrakeGuess } from '#engine/demand/calibrateBrake.ts'
import { fittedKind } from '#features/setup/bike/sayBrake.ts'
import type { Bike } from '#plan/model.ts'
import { words } from '#words/words.ts'

/** How far an exponent may lie outside the two laws and still be a brake read a little wrong. */
const SLACK = 0.15

/** What two cadences say about the brake, in a sentence or two. */
export function brakeWords({ brake, fit, exponent, comparisons }: BrakeGuess, before: Pick<Bike, 'brake' | 'brakeFit'>): string {
  const said = words.calibrating
  const stays = before.brakeFit ? said.brakeStaysFitted({ kind: fittedKind(before.brakeFit) }) : said.brakeStays(before)
  if (exponent === null) return said.brakeNoPair({ stays })
  if (comparisons < 2) return said.brakeOnePair({ stays })
  if (fit === null && brake === null) return said.brakeUndecided({ stays, exponent })
  const kind = fit === null ? brake! : fittedKind(fit)
  if (kind === 'between') return said.brakeBetween(fit!)
  return said.brakeFits({ brake: kind, exponent, impossible: exponent < 1 - SLACK || exponent > 2 + SLACK })
}
