import { computeRide } from '#engine/computeRide.ts'
import { checkpointRepair } from '#engine/findings/checkpoints.ts'
import { sayChange } from '#engine/ledger/sayCall.ts'
import type { Resistance } from '#plan/model.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import rows from './rows.json' with { type: 'json' }

/** In turns; the knob has quarter-turn steps. */
type Call = ['to', number, number] | ['exact' | 'atLeast' | 'ifYouHaveIt', number]
interface Inputs {
  calls: Call[]
  max: number
  nominal: number
  from: number
  to: number
  turns: number
}

const STEPS = 4

function resistanceOf([kind, first, second]: Call): Resistance {
  if (kind === 'to') return { kind: 'total', from: first * STEPS, to: second! * STEPS }
  return { kind: 'change', mode: kind, steps: first * STEPS }
}

/** Lowest, nominal and highest rider after the calls, from a loose wheel; null for an open end. */
function stateAfter({ calls, max }: Inputs): (number | null)[] {
  const ride = smallRide()
  const blocks = calls.map((call, i) => aBlock(`b${i}`, { ...inSeconds(30), resistance: resistanceOf(call) }))
  const bike = { ...ride.bike, stepsPerUnit: STEPS, max }
  const { low, nominal, high } = computeRide({ ...ride, datum: 'loose', bike, sections: [aSection('s', { blocks })] }).totals.endsAt
  return [low, nominal, high].map((steps) => (steps === null ? null : steps / STEPS))
}

checkRows('the ledger', rows, {
  'ledger.state': stateAfter,
  'ledger.repair': ({ nominal, from, to }: Inputs) => checkpointRepair(nominal * STEPS, { from: from * STEPS, to: to * STEPS }) / STEPS,
  'ledger.words': ({ turns }: Inputs) => sayChange(turns * STEPS, { unit: 'turn', stepsPerUnit: STEPS }),
})
