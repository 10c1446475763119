import type { Change, Keep } from '#plan/model.ts'
import type { KnobSteps } from '#units/units.ts'

/** A change, or a stay, that comes to other steps; none is a stay. Where riders should be is kept. */
export function turnedBy(call: Keep | Change, steps: KnobSteps): Keep | Change {
  if (steps !== 0) return changeOf(call, steps)
  return { kind: 'keep', ...(call.checkpoint && { checkpoint: call.checkpoint }) }
}

/** The same where there are some. A change turned round is an exact one: "at least" and "if you have it" were said about the other way. */
export function changeOf(call: Keep | Change, steps: KnobSteps): Change {
  const { checkpoint } = call
  const goesOn = call.kind === 'change' && Math.sign(steps) === Math.sign(call.steps)
  return { kind: 'change', mode: goesOn ? call.mode : 'exact', steps, ...(checkpoint && { checkpoint }) }
}
