/** Runs a task while no other window of this origin runs one of the same name. */
export type Alone = <Result>(name: string, task: () => Promise<Result>) => Promise<Result>

/** Milliseconds after which a window that holds on to its turn is no longer waited for. */
const LONGEST_WAIT = 3000

/** By the browser's locks, which a window that is killed gives up. Where there are none, or one never ends, the task runs all the same. */
export const aloneInBrowser: Alone = async (name, task) => {
  if (typeof navigator === 'undefined' || !navigator.locks) return task()
  let begun: ReturnType<typeof task> | undefined
  const run = () => {
    begun = task()
    return begun
  }
  try {
    return (await navigator.locks.request(`ridewright.${name}`, { signal: AbortSignal.timeout(LONGEST_WAIT) }, run)) as Awaited<
      ReturnType<typeof task>
    >
  } catch (error) {
    // Once begun, what went wrong is the task's own.
    if (begun) throw error
    return task()
  }
}
