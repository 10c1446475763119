import type { BeatGrid, Song } from '#plan/model.ts'
import type { Kit } from './kit.ts'
import { group, mapped, oneOf, pair, type Shape } from './shapes.ts'

export const songLayout = (kit: Kit): Shape<Song> =>
  group<Song>({
    id: kit.id,
    title: kit.name(),
    artist: kit.maybe(kit.name()),
    grid: kit.maybe(gridLayout(kit)),
    lengthSeconds: kit.anyNumber(),
    strikesPerBeat: kit.strikes(),
    marks: kit.maybe(kit.several('', group<{ count: number; label: string }>({ count: kit.whole(), label: kit.smallWords() }))),
    quiet: kit.maybe(kit.several('', group<{ from: number; to: number }>({ from: kit.whole(), to: kit.whole() }))),
    clean: kit.maybe(kit.yes()),
    fingerprint: kit.maybe(kit.smallWords()),
  })

type Anchors = BeatGrid['anchors']

/** A grid of one tempo as people enter it: so many beats in 1, 10, 100 or 1,000 minutes from the first. */
interface Steady {
  minutes: (typeof MINUTES)[number]
  beats: number
  firstBeat: number
}
const MINUTES = [1, 10, 100, 1000] as const

/** Beats of a bar; below 0 where a list of odd places follows, which came to the format later. */
type WrittenBars = BeatGrid['beatsPerBar'] | -4 | -3 | -6

/** Odd places lie in the columns of anchors that are spelled out: each is a count and a number, too. */
function gridLayout(kit: Kit): Shape<BeatGrid> {
  const steady = group<Steady>({
    minutes: oneOf<Steady['minutes']>()(kit.column(), MINUTES),
    beats: kit.whole(),
    firstBeat: kit.anyNumber(),
  })
  const pairs = kit.several('', pair(kit.signedWhole(), kit.anyNumber()))
  const anchors: Shape<Anchors> = mapped(
    kit.either((value: Steady | Anchors): value is Steady => 'beats' in value, steady, pairs),
    (value: Anchors) => steadyOf(value) ?? value,
    (written) => ('beats' in written ? anchorsOf(written) : written),
  )
  const bars = oneOf<WrittenBars>()(kit.column(), [4, 3, 6, -4, -3, -6])
  return {
    write({ anchors: held, beatsPerBar, odd }, to, place) {
      anchors.write(held, to, place)
      bars.write(odd ? (-beatsPerBar as WrittenBars) : beatsPerBar, to, place)
      if (odd) pairs.write(odd, to, place)
    },
    read(from, place) {
      const held = anchors.read(from, place)
      const written = bars.read(from, place)
      const beatsPerBar = Math.abs(written) as BeatGrid['beatsPerBar']
      return written > 0 ? { anchors: held, beatsPerBar } : { anchors: held, beatsPerBar, odd: pairs.read(from, place) }
    },
  }
}

/** Only where it gives back the very same anchors. */
function steadyOf(anchors: Anchors): Steady | undefined {
  const [first, last, more] = anchors
  if (!first || !last || more || first[0] !== 0) return undefined
  const minutes = MINUTES.find((long) => first[1] + 60 * long === last[1])
  return minutes && { minutes, beats: last[0], firstBeat: first[1] }
}

const anchorsOf = ({ minutes, beats, firstBeat }: Steady): Anchors => [
  [0, firstBeat],
  [beats, firstBeat + 60 * minutes],
]
