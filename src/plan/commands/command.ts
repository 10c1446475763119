import type { Ride } from '#plan/model.ts'
import type { Text } from '#words/said.ts'

/**
 * A change to a ride, with the words the undo list and the announcements use for it.
 * `apply` is pure and total: it returns the same object when there is nothing to change
 * (an unknown id, a value already held), and leaves untouched parts identical.
 */
export interface Command {
  /** In the past tense, as announced: "Moved “seated climb” to 3:40". */
  readonly label: Text
  readonly apply: (ride: Ride) => Ride
}
