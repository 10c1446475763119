import type { KnobSteps, StepRange } from '#units/units.ts'

interface Range extends StepRange {
  aim?: KnobSteps
  checkpoint?: StepRange
}

/** A range of totals as a whole so much heavier or lighter: both ends, the aim inside it and where riders should be. */
export function movedBy<R extends Range>(range: R, steps: KnobSteps): R {
  const { from, to, aim, checkpoint } = range
  return {
    ...range,
    from: from + steps,
    to: to + steps,
    ...(aim !== undefined && { aim: aim + steps }),
    ...(checkpoint && { checkpoint: movedBy(checkpoint, steps) }),
  }
}
