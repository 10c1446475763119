/** Only what the bench uses of it. */
declare module 'music-tempo' {
  export default class MusicTempo {
    constructor(samples: Float32Array)
    /** Beats a minute, as text. */
    tempo: string
    /** Seconds. */
    beats: number[]
  }
}
