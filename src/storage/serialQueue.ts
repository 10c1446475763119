/** Runs tasks one after the other; one that fails rejects for its caller alone and holds up none behind it. */
export function serialQueue(): <Result>(task: () => Promise<Result>) => Promise<Result> {
  let last: Promise<unknown> = Promise.resolve()
  return (task) => {
    const run = last.then(task, task)
    last = run.catch(() => undefined)
    return run
  }
}
