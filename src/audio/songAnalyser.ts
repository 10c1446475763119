import type { BeatHints, Beats, Hearing } from '#plan/heardSong.ts'
import type { SongSound } from '#plan/songSound.ts'
import { parseAnswer, type Question } from './protocol.ts'

/** Mono sound. */
export interface Mono {
  samples: Float32Array
  sampleRate: number
}

/** What hearing needs of the browser; tests bring their own. */
export interface SoundWorld {
  /** @throws where the bytes are not of a kind of sound that is known here */
  decode: (bytes: ArrayBuffer) => Promise<Mono>
  /** The same short text for the same bytes. */
  fingerprint: (bytes: ArrayBuffer) => Promise<string>
  startWorker: () => Worker
}

interface Waiting {
  file: File
  hints: BeatHints
  say: (hearing: Hearing) => void
  /** Set while the file is being heard. */
  stop?: () => void
  aborted: boolean
}

/**
 * Takes files of music and says of each where it stands, from `waiting` to `heard`, `failed` or `aborted`. One file at a time: decoded on the page, which alone can, mixed to one channel and handed to a worker of its own.
 */
export function createSongAnalyser(world: SoundWorld) {
  const queue: Waiting[] = []
  let busy = false

  async function next(): Promise<void> {
    if (busy) return
    const one = queue.shift()
    if (!one) return
    busy = true
    one.say(await hearOne(one, world))
    busy = false
    void next()
  }

  return {
    hear: (file: File, hints: BeatHints, onChange: (hearing: Hearing) => void) => {
      const one: Waiting = { file, hints, aborted: false, say: onChange }
      queue.push(one)
      onChange({ kind: 'waiting' })
      void next()
      return {
        abort: () => {
          one.aborted = true
          one.stop?.()
          const place = queue.indexOf(one)
          if (place < 0) return
          queue.splice(place, 1)
          onChange({ kind: 'aborted' })
        },
      }
    },
  }
}

/** Hears one file to its end, whichever that is; it never rejects, so that the files behind it have their turn. */
async function hearOne(one: Waiting, world: SoundWorld): Promise<Hearing> {
  const { name } = one.file
  one.say({ kind: 'decoding' })
  let mono: Mono
  let fingerprint: string
  try {
    const bytes = await one.file.arrayBuffer()
    // First, because decoding takes the bytes away.
    fingerprint = await world.fingerprint(bytes)
    mono = await world.decode(bytes)
  } catch {
    return one.aborted ? { kind: 'aborted' } : { kind: 'failed', sentence: `“${name}” cannot be read as music by this browser.` }
  }
  if (one.aborted) return { kind: 'aborted' }
  const lengthSeconds = mono.samples.length / mono.sampleRate
  one.say({ kind: 'analysing', share: 0 })
  try {
    const said = await askWorker(one, mono, world)
    if (said === 'aborted') return { kind: 'aborted' }
    const { peaks, loudness, beats } = said
    const sound = { id: fingerprint, lengthSeconds, peaks, loudness }
    return { kind: 'heard', song: { title: titleOf(name), lengthSeconds, fingerprint, sound, beats } }
  } catch {
    return { kind: 'failed', sentence: `The beat of “${name}” could not be found: the analysis stopped.` }
  }
}

interface Said extends Pick<SongSound, 'peaks' | 'loudness'> {
  beats: Beats | null
}

function askWorker(one: Waiting, { samples, sampleRate }: Mono, world: SoundWorld): Promise<Said | 'aborted'> {
  const worker = world.startWorker()
  const answer = new Promise<Said | 'aborted'>((resolve, reject) => {
    let sound: Pick<SongSound, 'peaks' | 'loudness'> = { peaks: new Uint8Array(), loudness: new Float32Array() }
    one.stop = () => resolve('aborted')
    worker.onerror = (event) => reject(new Error(event.message))
    worker.onmessage = ({ data }) => {
      const said = parseAnswer(data)
      if (said?.kind === 'sound') sound = { peaks: said.peaks, loudness: said.loudness }
      if (said?.kind === 'share') one.say({ kind: 'analysing', share: said.share })
      if (said?.kind === 'beats') resolve({ ...sound, beats: said.beats })
      if (said?.kind === 'failed') reject(new Error(said.message))
    }
    const question: Question = { samples, sampleRate, hints: one.hints }
    worker.postMessage(question, [samples.buffer])
  })
  return answer.finally(() => {
    delete one.stop
    worker.terminate()
  })
}

/** A file's name as a title: without its ending, with spaces for underscores. */
const titleOf = (name: string): string =>
  name
    .replace(/\.[^.]{1,5}$/, '')
    .replaceAll('_', ' ')
    .trim() || name
