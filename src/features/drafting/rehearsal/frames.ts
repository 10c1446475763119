/** Listeners that are called for every frame the page draws, while `isOn` says so, and once more when it no longer does. */
export interface Frames {
  /** Calls the listener at once, and from then on; returns what ends it. */
  subscribe: (listener: (timestamp?: number) => void) => () => void
  /** Something has changed: every listener is called, and frames go on if they are to. */
  wake: () => void
}

export function createFrames(isOn: () => boolean): Frames {
  const listeners = new Set<(timestamp?: number) => void>()
  let handle = 0
  function frame(timestamp: number) {
    handle = 0
    for (const listener of listeners) listener(timestamp)
    next()
  }
  function next() {
    if (handle === 0 && listeners.size > 0 && isOn()) handle = requestAnimationFrame(frame)
  }
  return {
    subscribe: (listener) => {
      listeners.add(listener)
      listener()
      next()
      return () => {
        listeners.delete(listener)
        if (listeners.size === 0 && handle !== 0) {
          cancelAnimationFrame(handle)
          handle = 0
        }
      }
    },
    wake: () => {
      for (const listener of listeners) listener()
      next()
    },
  }
}
