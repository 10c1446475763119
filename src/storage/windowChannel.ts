/** Tells other windows of this origin which ride was saved or deleted. A window does not hear itself. */
export interface WindowChannel {
  tell: (rideId: string) => void
  /** The result ends the listening. */
  listen: (listener: (rideId: string) => void) => () => void
  close: () => void
}

/** Of saved rides. */
const RIDES = 'ridewright.saved'

/** Null where the browser has no such channel; saving works without. */
export function openWindowChannel(name = RIDES): WindowChannel | null {
  if (typeof BroadcastChannel === 'undefined') return null
  const channel = new BroadcastChannel(name)
  return {
    tell: (rideId) => channel.postMessage(rideId),
    listen: (listener) => {
      const hear = ({ data }: MessageEvent<unknown>) => {
        if (typeof data === 'string') listener(data)
      }
      channel.addEventListener('message', hear)
      return () => channel.removeEventListener('message', hear)
    },
    close: () => channel.close(),
  }
}
