const NAME = 'ridewright.window.'

/** Has other windows see that this one is open, until it is closed or killed. */
export function showOpen(window: string): void {
  void navigator.locks?.request(NAME + window, () => new Promise(() => {})).catch(() => undefined)
}

/** Tells which windows are open now; none where the browser cannot say. */
export async function openWindows(): Promise<(window: string) => boolean> {
  const held = (await navigator.locks?.query().catch(() => null))?.held ?? []
  const names = new Set(held.map(({ name }) => name))
  return (window) => names.has(NAME + window)
}
