import { fingerprint } from '#plan/document/fingerprint.ts'
import { toBase64url } from '#plan/link/base64url.ts'
import type { Decoded, SoundWorld } from './songAnalyser.ts'

/** Everything is heard at this rate, Hz; the browser converts. */
const RATE = 44_100

/** Twelve bytes, sixteen letters: no two songs anybody has will share them, and a link stays short. */
const FINGERPRINT_BYTES = 12

/** The browser's own decoder and a worker of this build. What reads tags is fetched with the first file. */
export const browserSound: SoundWorld = {
  decode: async (bytes) => channelsOf(await new OfflineAudioContext(1, 1, RATE).decodeAudioData(bytes)),
  fingerprint: fingerprintOf,
  readTags: async (file) => (await import('./readTags.ts')).readTags(file),
  startWorker: () => new Worker(new URL('./analyse.worker.ts', import.meta.url), { type: 'module' }),
}

/** Copies, which can be handed to the worker; mixing them is left to it, since the page is busy with every sample it touches. */
function channelsOf(sound: AudioBuffer): Decoded {
  const channels = Array.from({ length: sound.numberOfChannels }, (_, channel) => sound.getChannelData(channel).slice())
  return { channels, sampleRate: sound.sampleRate }
}

/** By SHA-256 off the page's thread; a page that was not served safely has none and sums the bytes itself. */
async function fingerprintOf(bytes: ArrayBuffer): Promise<string> {
  if (!crypto.subtle) return fingerprint(new TextDecoder('latin1').decode(bytes))
  return toBase64url(new Uint8Array(await crypto.subtle.digest('SHA-256', bytes)).subarray(0, FINGERPRINT_BYTES))
}
