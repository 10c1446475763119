import { expect } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Resistance, Ride } from '#plan/model.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { aBlock, aSection, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'
import { formatSignedSetting } from '#units/formatSetting.ts'
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
  const { low, nominal, high } = computeRide({ ...ride, datum: 'loose', bike, sections: [aSection('s', { blocks })] }).overall.endsAt
  return [low, nominal, high].map((steps) => (steps === null ? null : steps / STEPS))
}

/** A loose wheel on quarter turns, and these calls. */
const calling = (...resistances: Resistance[]): Ride => ({
  ...smallRide(),
  datum: 'loose',
  sections: [aSection('s', { blocks: resistances.map((resistance, i) => aBlock(`b${i}`, { ...inSeconds(30), resistance })) })],
})

/** What the repair that is offered for a missed checkpoint adds to the last change, in turns. */
function repairOf({ nominal, from, to }: Inputs): number {
  const checkpoint = { from: from * STEPS, to: to * STEPS }
  const ride = calling({ kind: 'change', mode: 'exact', steps: nominal * STEPS, checkpoint })
  const { findings, overall } = computeRide(ride)
  const { fixes, text } = findings.find(({ rule }) => rule === 'checkpointMissed')!
  const repaired = computeRide(fixes[0]!.command.apply(ride))
  expect(repaired.findings.filter(({ rule }) => rule.startsWith('checkpoint'))).toEqual([])
  const turns = (repaired.overall.endsAt.nominal - overall.endsAt.nominal) / STEPS
  expect(told(text)).toContain(`off by ${formatSignedSetting(turns * STEPS, STEPS)}.`)
  return turns
}

/** The words of a change, called out from ten turns. */
const wordsOf = ({ turns }: Inputs): string =>
  computeRide(calling(totalOf(10), { kind: 'change', mode: 'exact', steps: turns * STEPS })).blocks[1]!.ledger.call

const totalOf = (turns: number): Resistance => ({ kind: 'total', from: turns * STEPS, to: turns * STEPS })

checkRows('the ledger', rows, { 'ledger.state': stateAfter, 'ledger.repair': repairOf, 'ledger.words': wordsOf })
