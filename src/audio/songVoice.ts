import type { Sounding } from '#plan/sound/score.ts'
import type { Seconds } from '#units/units.ts'
import type { PlayClock } from './playClock.ts'

/** A file that begins or stops in its middle does so this softly, or it cracks. */
const SOFT: Seconds = 0.008

/** What is given to the sound card for less than this ahead may begin late. */
const SOON: Seconds = 0.02

/** A stretch of a song while it sounds. */
export interface SongVoice {
  readonly song: string
  readonly startsAt: Seconds
  /** The second of the file that sounds at a time of the sound card. */
  songSecondAt: (time: Seconds) => Seconds
  /** Goes on without a break as another stretch of a score, or at another pace, from a time on. */
  goOnAs: (sounding: Sounding, clock: PlayClock, time: Seconds) => void
  end: (time: Seconds) => void
}

/** Starts a stretch where the score is, or at its beginning where that is still to come. Null where the file is over by then. */
export function startVoice(
  context: BaseAudioContext,
  out: AudioNode,
  file: AudioBuffer,
  sounding: Sounding,
  clock: PlayClock,
  onEnded: () => void,
): SongVoice | null {
  // A file that comes late joins a moment on, so that it is exactly where the clicks are.
  const begun = Math.max(sounding.from, clock.at(context.currentTime + SOON), clock.from)
  const startsAt = clock.when(begun)
  const second = sounding.songFrom + (begun - sounding.from)
  if (second >= file.duration || begun >= sounding.to) return null

  const source = context.createBufferSource()
  const gain = context.createGain()
  source.buffer = file
  source.playbackRate.value = clock.rate
  source.connect(gain).connect(out)
  source.onended = () => {
    source.disconnect()
    gain.disconnect()
    onEnded()
  }
  let known = { time: startsAt, second, rate: clock.rate }
  const songSecondAt = (time: Seconds) => known.second + (time - known.time) * known.rate

  gain.gain.setValueAtTime(0, startsAt)
  gain.gain.linearRampToValueAtTime(levelAt(sounding, begun), startsAt + SOFT)
  shape(gain.gain, sounding, clock, startsAt + SOFT)
  source.start(startsAt, second)
  source.stop(clock.when(sounding.to))

  return {
    song: sounding.song,
    startsAt,
    songSecondAt,
    goOnAs: (next, now, time) => {
      known = { time, second: songSecondAt(time), rate: now.rate }
      source.playbackRate.setValueAtTime(now.rate, time)
      gain.gain.cancelScheduledValues(time)
      gain.gain.setValueAtTime(levelAt(next, now.at(time)), time)
      shape(gain.gain, next, now, time)
      source.stop(Math.max(time, now.when(next.to)))
    },
    end: (time) => {
      gain.gain.cancelScheduledValues(time)
      gain.gain.setTargetAtTime(0, time, SOFT / 4)
      source.stop(time + SOFT)
    },
  }
}

/** How loud a stretch is at a place of its score, 0 to 1. */
const levelAt = ({ from, to, fadeIn, fadeOut }: Sounding, at: Seconds): number =>
  Math.max(0, Math.min(1, fadeIn > 0 ? (at - from) / fadeIn : 1, fadeOut > 0 ? (to - at) / fadeOut : 1))

/** The rest of a stretch's rise and fall, from a time on. */
function shape(gain: AudioParam, sounding: Sounding, clock: PlayClock, time: Seconds): void {
  const { from, to, fadeIn, fadeOut } = sounding
  for (const corner of [from + fadeIn, to - fadeOut, to]) {
    if (clock.when(corner) > time) gain.linearRampToValueAtTime(levelAt(sounding, corner), clock.when(corner))
  }
}
