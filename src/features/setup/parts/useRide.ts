import type { Command } from '#plan/commands/command.ts'
import type { Ride } from '#plan/model.ts'
import { type Told, useApp, useAppStore } from '#store/useApp.ts'

/** A part of the ride as committed, or of the one received; never of a preview. */
export const useRide = <Part>(read: (ride: Ride) => Told<Part>): Part =>
  useApp<Part>(({ received, ride, shown }) => read(received?.ride ?? ride ?? shown!))

/** Runs a command on the ride as it is then, as one undo step. */
export function useRun(): (command: (ride: Ride) => Command) => void {
  const store = useAppStore()
  return (command) => {
    const { ride, run } = store.getState()
    if (ride) run(command(ride))
  }
}
