import { analyzeFullBuffer } from 'realtime-bpm-analyzer'
import { guess } from 'web-audio-beat-detector'
import { browserSound } from '#audio/browserSound.ts'
import { parseAnswer, type Question } from '#audio/protocol.ts'
import type { Said } from '#tests/bench/corpus/judge.ts'

/** What a tool says of a song and how long it took, seconds. */
export interface Heard {
  said: Said | null
  took: number
}

const RATE = 44_100
const NOTHING = { beats: null, downbeats: null, eights: null, beatsPerBar: null }

const TOOLS = {
  'this analysis’s worker': inWorker,
  'web-audio-beat-detector': async (sound: AudioBuffer): Promise<Said> => {
    // It gives the tempo unrounded as well, which its types leave out.
    const { bpm, offset, tempo = bpm }: { bpm: number; offset: number; tempo?: number } = await guess(sound)
    const beats = Array.from({ length: Math.ceil(((sound.duration - offset) * tempo) / 60) }, (_, n) => offset + (n * 60) / tempo)
    return { ...NOTHING, bpm: tempo, beats }
  },
  'realtime-bpm-analyzer': async (sound: AudioBuffer): Promise<Said> => ({ ...NOTHING, bpm: (await analyzeFullBuffer(sound))[0]!.tempo }),
}

export type BrowserTool = keyof typeof TOOLS

/** One tool on the song at an address, without its first seconds. A tool that throws found nothing, which is an answer. */
async function hear(tool: BrowserTool, address: string, cut: number): Promise<Heard> {
  const whole = await new OfflineAudioContext(1, 1, RATE).decodeAudioData(await (await fetch(address)).arrayBuffer())
  const samples = whole.getChannelData(0).subarray(Math.round(cut * RATE))
  const sound = new AudioBuffer({ length: samples.length, sampleRate: RATE })
  sound.copyToChannel(samples, 0)
  const start = performance.now()
  const said = await TOOLS[tool](sound).catch(() => null)
  return { said, took: (performance.now() - start) / 1000 }
}

/** As the page does it: a worker of its own for each song. */
function inWorker(sound: AudioBuffer): Promise<Said | null> {
  const worker = browserSound.startWorker()
  const samples = sound.getChannelData(0).slice()
  const answer = new Promise<Said | null>((resolve, reject) => {
    worker.onerror = ({ message }) => reject(new Error(message))
    worker.onmessage = ({ data }) => {
      const said = parseAnswer(data)
      if (said?.kind === 'beats') resolve(said.beats)
      if (said?.kind === 'failed') reject(new Error(said.message))
    }
  })
  const question: Question = { channels: [samples], sampleRate: sound.sampleRate, hints: {} }
  worker.postMessage(question, [samples.buffer])
  return answer.finally(() => worker.terminate())
}

export interface HearingWindow {
  hear: typeof hear
}
Object.assign(window, { hear } satisfies HearingWindow)
