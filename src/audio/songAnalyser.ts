import { type BeatHints, type Beats, type Hearing, octaveAbout } from '#plan/songs/heardSong.ts'
import { namedByFile, type SongTags } from '#plan/songs/songTags.ts'
import type { SongSound } from '#plan/sound/songSound.ts'
import { say } from '#words/said.ts'
import { parseAnswer, type Question } from './protocol.ts'

/** The sound of a file: at least one channel, all of one length. */
export interface Decoded {
  channels: Float32Array[]
  sampleRate: number
}

/** What hearing needs of the browser; tests bring their own. */
export interface SoundWorld {
  /** @throws where the bytes are not of a kind of sound that is known here */
  decode: (bytes: ArrayBuffer) => Promise<Decoded>
  /** The same short text for the same bytes. */
  fingerprint: (bytes: ArrayBuffer) => Promise<string>
  /** What the file says of itself. May reject: a file without readable tags is called by its name. */
  readTags: (file: Blob) => Promise<SongTags>
  startWorker: () => Worker
}

interface HearOptions {
  /** Whether all that hearing the file would give is there already, by its fingerprint; such a file is not listened to. */
  isKnown?: (fingerprint: string) => Promise<boolean>
  /** Goes before the files that wait: somebody is looking at it. */
  ahead?: boolean
}

interface Waiting {
  file: File
  hints: BeatHints
  say: (hearing: Hearing) => void
  options: HearOptions
  /** Set while the file is being heard. */
  stop?: () => void
  aborted: boolean
}

/**
 * Takes files of music and says of each where it stands, from `waiting` to `heard`, `known`, `failed` or `aborted`. One file at a time: decoded on the page, which alone can, mixed to one channel and handed to a worker of its own.
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
    hear: (file: File, hints: BeatHints, onChange: (hearing: Hearing) => void, options: HearOptions = {}) => {
      const one: Waiting = { file, hints, aborted: false, say: onChange, options }
      const place = options.ahead ? queue.findIndex((other) => !other.options.ahead) : -1
      queue.splice(place < 0 ? queue.length : place, 0, one)
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
  let decoded: Decoded
  let fingerprint: string
  let tags: SongTags
  try {
    const bytes = await one.file.arrayBuffer()
    // First, because decoding takes the bytes away.
    fingerprint = await world.fingerprint(bytes)
    if (await one.options.isKnown?.(fingerprint)) return one.aborted ? { kind: 'aborted' } : { kind: 'known', fingerprint }
    tags = await world.readTags(one.file).catch(() => ({}))
    decoded = await world.decode(bytes)
  } catch {
    return one.aborted ? { kind: 'aborted' } : { kind: 'failed', sentence: say('storage.notMusic', { file: name }) }
  }
  if (one.aborted) return { kind: 'aborted' }
  const lengthSeconds = decoded.channels[0]!.length / decoded.sampleRate
  one.say({ kind: 'analysing', share: 0 })
  try {
    const said = await askWorker({ ...decoded, hints: hintsFor(one, tags) }, one, world)
    if (said === 'aborted') return { kind: 'aborted' }
    const { peaks, loudness, beats } = said
    const sound = { id: fingerprint, lengthSeconds, peaks, loudness }
    return { kind: 'heard', song: { ...namedByFile(tags, name), lengthSeconds, fingerprint, sound, beats } }
  } catch {
    return { kind: 'failed', sentence: say('storage.noBeat', { file: name }) }
  }
}

/** A tempo in the tags settles half against double where nothing else does; it is never taken for the tempo itself. */
const hintsFor = ({ hints }: Waiting, { bpm }: SongTags): BeatHints =>
  hints.window || !bpm ? hints : { ...hints, window: octaveAbout(bpm) }

interface Said extends Pick<SongSound, 'peaks' | 'loudness'> {
  beats: Beats | null
}

function askWorker(question: Question, one: Waiting, world: SoundWorld): Promise<Said | 'aborted'> {
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
    worker.postMessage(
      question,
      question.channels.map(({ buffer }) => buffer),
    )
  })
  return answer.finally(() => {
    delete one.stop
    worker.terminate()
  })
}
