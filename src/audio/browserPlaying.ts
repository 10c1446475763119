import type { PlayerWorld } from './player.ts'

/** The browser's sound card and timers. */
export const browserPlaying: PlayerWorld = {
  openContext: () => new AudioContext({ latencyHint: 'interactive' }),
  every: (milliseconds, run) => {
    const timer = setInterval(run, milliseconds)
    return () => clearInterval(timer)
  },
  // A hidden page may be called once a second only.
  horizon: () => (document.visibilityState === 'hidden' ? 1.5 : 0.18),
}
