import type { PlayerWorld } from '#audio/player.ts'

/** Something that was given to the sound card, in its times. */
export interface Given {
  /** Seconds of the sound: clicks are shorter than a second. */
  length: number
  when: number
  offset: number
  /** When it was told to stop; infinite where it was not. */
  stop: number
  rates: [time: number, rate: number][]
}

/**
 * A sound card whose time goes on when the test says so, with all that is given to it. Files are told
 * apart by their length: a blob of n bytes decodes to n seconds.
 */
export function fakeSoundCard({ horizon = 0.2 } = {}) {
  const given: Given[] = []
  let timer: (() => void) | null = null
  let decoding = 0
  const state = { decoded: [] as number[], closed: false, latency: 0.02 }
  const param = (set: (value: number, time: number) => void = () => {}) => ({
    set value(value: number) {
      set(value, -1)
    },
    setValueAtTime: (value: number, time: number) => set(value, time),
    linearRampToValueAtTime: () => {},
    setTargetAtTime: () => {},
    cancelScheduledValues: () => {},
  })
  const node = () => ({ connect: (next: unknown) => next, disconnect: () => {} })
  const context = {
    currentTime: 1,
    sampleRate: 8000,
    state: 'running',
    get baseLatency() {
      return state.latency
    },
    outputLatency: 0,
    destination: node(),
    createGain: () => ({ ...node(), gain: param() }),
    createBuffer: (_channels: number, length: number, sampleRate: number) => ({ duration: length / sampleRate, copyToChannel: () => {} }),
    createBufferSource: () => {
      const one: Given = { length: 0, when: Number.NaN, offset: 0, stop: Number.POSITIVE_INFINITY, rates: [] }
      return {
        ...node(),
        set buffer(buffer: { duration: number }) {
          one.length = buffer.duration
        },
        playbackRate: param((rate, time) => one.rates.push([time, rate])),
        start: (when = context.currentTime, offset = 0) => {
          given.push(Object.assign(one, { when, offset }))
        },
        stop: (time = context.currentTime) => {
          one.stop = time
        },
      }
    },
    decodeAudioData: async (bytes: ArrayBuffer) => {
      decoding++
      if (bytes.byteLength === 0) throw new Error('no music')
      state.decoded.push(bytes.byteLength)
      return { duration: bytes.byteLength }
    },
    resume: async () => {},
    close: async () => {
      state.closed = true
    },
  }
  const world: PlayerWorld = {
    openContext: () => context as unknown as AudioContext,
    every: (_milliseconds, run) => {
      timer = run
      return () => {
        if (timer === run) timer = null
      }
    },
    horizon: () => horizon,
  }
  return {
    world,
    state,
    given,
    get decoding() {
      return decoding
    },
    get now() {
      return context.currentTime
    },
    get ticks() {
      return timer !== null
    },
    /** Time goes on, and the timer is called at the end of it. */
    pass: (seconds: number) => {
      context.currentTime += seconds
      timer?.()
    },
    /** Clicks that sounded or will: not taken back before they began. */
    clicks: () => given.filter(({ length, when, stop }) => length < 1 && stop > when),
    songs: () => given.filter(({ length }) => length >= 1),
  }
}
