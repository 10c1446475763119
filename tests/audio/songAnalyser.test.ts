import { describe, expect, it } from 'vitest'
import { parseAnswer, type Question } from '#audio/protocol.ts'
import { createSongAnalyser, type SoundWorld } from '#audio/songAnalyser.ts'
import type { Beats, Hearing } from '#plan/songs/heardSong.ts'
import { say } from '#words/said.ts'

const BEATS: Beats = {
  bpm: 120,
  beats: [0.5, 1, 1.5],
  downbeats: [0.5],
  eights: [0.5],
  beatsPerBar: 4,
  firstBeat: 0.5,
  confidence: 0.9,
  drifts: [],
  steady: true,
}

/** A world whose workers answer when told to. */
function aWorld() {
  const workers: { ended: boolean; asked: Question[]; say: (data: unknown) => void; break: () => void }[] = []
  const world: SoundWorld = {
    decode: async (bytes) => {
      if (bytes.byteLength === 0) throw new Error('no sound')
      return { channels: [new Float32Array(bytes.byteLength)], sampleRate: 1 }
    },
    fingerprint: async (bytes) => `of ${bytes.byteLength} bytes`,
    readTags: async () => {
      throw new Error('no tags')
    },
    startWorker: () => {
      const worker = { onmessage: null, onerror: null, terminate: () => {} } as unknown as Worker
      const told = {
        ended: false,
        asked: [] as Question[],
        say: (data: unknown) => worker.onmessage?.({ data } as MessageEvent),
        break: () => worker.onerror?.({ message: 'out of memory' } as ErrorEvent),
      }
      worker.postMessage = (question: Question) => void told.asked.push(question)
      worker.terminate = () => {
        told.ended = true
      }
      workers.push(told)
      return worker
    },
  }
  return { world, workers }
}

const settled = () => new Promise((done) => setTimeout(done, 5))

describe('files of music', () => {
  it('are heard one after another, and a broken one says so by name', async () => {
    const { world, workers } = aWorld()
    const analyser = createSongAnalyser(world)
    const said: Record<string, Hearing[]> = {}
    for (const [name, bytes] of [
      ['a_song.mp3', 'xxxx'],
      ['broken.wav', ''],
      ['b.ogg', 'yy'],
    ] as const) {
      said[name] = []
      analyser.hear(new File([bytes], name), {}, (hearing) => said[name]!.push(hearing))
    }
    await settled()
    expect(workers).toHaveLength(1)
    expect(said['b.ogg']).toEqual([{ kind: 'waiting' }])
    workers[0]!.say({ kind: 'sound', peaks: new Uint8Array([9]), loudness: new Float32Array([-14]) })
    workers[0]!.say({ kind: 'share', share: 0.5 })
    workers[0]!.say({ kind: 'beats', beats: BEATS })
    await settled()
    expect(said['a_song.mp3']!.at(-2)).toEqual({ kind: 'analysing', share: 0.5 })
    expect(said['a_song.mp3']!.at(-1)).toEqual({
      kind: 'heard',
      song: {
        title: 'a song',
        lengthSeconds: 4,
        fingerprint: 'of 4 bytes',
        sound: { id: 'of 4 bytes', lengthSeconds: 4, peaks: new Uint8Array([9]), loudness: new Float32Array([-14]) },
        beats: BEATS,
      },
    })
    expect(said['broken.wav']!.at(-1)).toEqual({ kind: 'failed', sentence: say('storage.notMusic', { file: 'broken.wav' }) })
    expect(workers.map(({ ended }) => ended)).toEqual([true, false])
    workers[1]!.break()
    await settled()
    expect(said['b.ogg']!.at(-1)).toEqual({ kind: 'failed', sentence: say('storage.noBeat', { file: 'b.ogg' }) })
  })

  it('can be stopped while they wait and while they are heard, and the rest go on', async () => {
    const { world, workers } = aWorld()
    const analyser = createSongAnalyser(world)
    const last: Record<string, Hearing> = {}
    const started = ['a', 'b', 'c'].map((name) =>
      analyser.hear(new File(['x'], name), {}, (hearing) => {
        last[name] = hearing
      }),
    )
    await settled()
    started[1]!.abort()
    started[0]!.abort()
    await settled()
    expect([last.a, last.b]).toEqual([{ kind: 'aborted' }, { kind: 'aborted' }])
    expect(workers.map(({ ended }) => ended)).toEqual([true, false])
    workers[1]!.say({ kind: 'beats', beats: null })
    await settled()
    expect(last.c).toMatchObject({ kind: 'heard', song: { beats: null } })
  })
})

it('a file somebody is looking at goes before those that wait, after others of its kind', async () => {
  const { world, workers } = aWorld()
  const analyser = createSongAnalyser(world)
  const order: string[] = []
  const hear = (name: string, ahead: boolean) =>
    analyser.hear(new File(['x'], name), {}, ({ kind }) => kind === 'decoding' && order.push(name), { ahead })
  for (const name of ['shelf 1', 'shelf 2', 'shelf 3']) hear(name, false)
  hear('section 1', true)
  hear('section 2', true)
  for (let i = 0; i < 5; i++) {
    await settled()
    workers[i]!.say({ kind: 'beats', beats: null })
  }
  await settled()
  expect(order).toEqual(['shelf 1', 'section 1', 'section 2', 'shelf 2', 'shelf 3'])
})

describe('what is known before a file is heard', () => {
  it('names the song by its tags, whose tempo settles no more than the octave and gives way to what is asked', async () => {
    const { world, workers } = aWorld()
    world.readTags = async () => ({ title: 'Low Tide', artist: 'Salt Lantern', bpm: 128 })
    const analyser = createSongAnalyser(world)
    let last: Hearing | undefined
    analyser.hear(new File(['x'], 'track01.mp3'), {}, (hearing) => {
      last = hearing
    })
    await settled()
    expect(workers[0]!.asked[0]!.hints.window!.from).toBeCloseTo(128 / Math.SQRT2, 9)
    expect(workers[0]!.asked[0]!.hints.window!.to).toBeCloseTo(128 * Math.SQRT2, 9)
    workers[0]!.say({ kind: 'beats', beats: BEATS })
    await settled()
    expect(last).toMatchObject({ kind: 'heard', song: { title: 'Low Tide', artist: 'Salt Lantern', beats: { bpm: 120 } } })
    analyser.hear(new File(['x'], 'track01.mp3'), { window: { from: 60, to: 78 } }, () => {})
    await settled()
    expect(workers[1]!.asked[0]!.hints).toEqual({ window: { from: 60, to: 78 } })
  })

  it('spares a file that is known, and the next one has its turn', async () => {
    const { world, workers } = aWorld()
    const analyser = createSongAnalyser(world)
    const last: Hearing[] = []
    const isKnown = async (fingerprint: string) => fingerprint === 'of 2 bytes'
    for (const [index, bytes] of ['xx', 'xxx'].entries()) {
      const say = (hearing: Hearing) => {
        last[index] = hearing
      }
      analyser.hear(new File([bytes], `${index}.mp3`), {}, say, { isKnown })
    }
    await settled()
    expect(last[0]).toEqual({ kind: 'known', fingerprint: 'of 2 bytes' })
    expect(workers).toHaveLength(1)
    expect(workers[0]!.asked[0]!.channels[0]).toHaveLength(3)
  })
})

describe('what a worker says', () => {
  it('is read where it is of the protocol', () => {
    expect(parseAnswer({ kind: 'share', share: 0.25 })).toEqual({ kind: 'share', share: 0.25 })
    expect(parseAnswer({ kind: 'beats', beats: BEATS })).toEqual({ kind: 'beats', beats: BEATS })
    expect(parseAnswer({ kind: 'beats', beats: null })).toEqual({ kind: 'beats', beats: null })
  })

  it.each([
    null,
    'beats',
    { kind: 'share', share: 2 },
    { kind: 'failed' },
    { kind: 'beats', beats: { ...BEATS, bpm: Number.NaN } },
    { kind: 'beats', beats: { ...BEATS, beats: [1, 1] } },
    { kind: 'beats', beats: { ...BEATS, beatsPerBar: 5 } },
    { kind: 'beats', beats: { ...BEATS, eights: [2, 1] } },
    { kind: 'beats', beats: { ...BEATS, eights: undefined } },
    { kind: 'beats', beats: { ...BEATS, drifts: [{ from: 0 }] } },
  ])('is nothing where it is not: %j', (data) => {
    expect(parseAnswer(data)).toBeNull()
  })
})
