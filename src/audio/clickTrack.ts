import type { ClickKind } from '#plan/sound/score.ts'
import type { Seconds } from '#units/units.ts'
import { clickSamples } from './clickSounds.ts'

/** Clicks that were given to the sound card ahead of time, and can be taken back until they sound. */
interface ClickTrack {
  /** Sounds a click on the sample of a time of the sound card. */
  add: (kind: ClickKind, when: Seconds) => void
  /** Takes back those that would begin at a time or later. */
  takeBackFrom: (time: Seconds) => void
}

export function createClickTrack(context: BaseAudioContext, out: AudioNode): ClickTrack {
  const sounds = new Map<ClickKind, AudioBuffer>()
  const waiting = new Map<AudioBufferSourceNode, Seconds>()

  function soundOf(kind: ClickKind): AudioBuffer {
    const known = sounds.get(kind)
    if (known) return known
    const samples = clickSamples(kind, context.sampleRate)
    const sound = context.createBuffer(1, samples.length, context.sampleRate)
    sound.copyToChannel(samples, 0)
    sounds.set(kind, sound)
    return sound
  }

  const forget = (source: AudioBufferSourceNode) => {
    waiting.delete(source)
    source.disconnect()
  }

  return {
    add: (kind, when) => {
      const source = context.createBufferSource()
      source.buffer = soundOf(kind)
      source.connect(out)
      source.onended = () => forget(source)
      source.start(when)
      waiting.set(source, when)
    },
    takeBackFrom: (time) => {
      for (const [source, when] of waiting) {
        if (when < time) continue
        source.stop()
        forget(source)
      }
    },
  }
}
