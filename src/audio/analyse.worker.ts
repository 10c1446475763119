import { analyseInSteps } from './dsp/analyseBeats.ts'
import { loudnessOf } from './dsp/loudnessOf.ts'
import { mixed } from './dsp/mixed.ts'
import { peaksOf } from './dsp/peaksOf.ts'
import type { Answer, Question } from './protocol.ts'

/** One song a worker: the page ends it to abort, so nothing here has to listen while it counts. */
addEventListener('message', ({ data }: MessageEvent<Question>) => {
  const say = (answer: Answer) => postMessage(answer)
  try {
    const { sampleRate, hints } = data
    const samples = mixed(data.channels)
    say({ kind: 'sound', peaks: peaksOf(samples, sampleRate), loudness: loudnessOf(samples, sampleRate) })
    const steps = analyseInSteps(samples, sampleRate, hints)
    for (;;) {
      const step = steps.next()
      if (step.done) return say({ kind: 'beats', beats: step.value })
      say({ kind: 'share', share: step.value })
    }
  } catch (error) {
    say({ kind: 'failed', message: String(error) })
  }
})
