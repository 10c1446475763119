import type { Mono, SoundWorld } from './songAnalyser.ts'

/** Everything is heard at this rate, Hz; the browser converts. */
const RATE = 44_100

/** The browser's own decoder and a worker of this build. */
export const browserSound: SoundWorld = {
  decode: async (bytes) => mixed(await new OfflineAudioContext(1, 1, RATE).decodeAudioData(bytes)),
  startWorker: () => new Worker(new URL('./analyse.worker.ts', import.meta.url), { type: 'module' }),
}

/** All channels in equal parts. */
function mixed(sound: AudioBuffer): Mono {
  const samples = new Float32Array(sound.length)
  for (let channel = 0; channel < sound.numberOfChannels; channel++) {
    const part = sound.getChannelData(channel)
    for (let i = 0; i < samples.length; i++) samples[i]! += part[i]! / sound.numberOfChannels
  }
  return { samples, sampleRate: sound.sampleRate }
}
