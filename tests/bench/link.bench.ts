import { deflateSync } from 'fflate'
import { toBase64url } from '#plan/link/base64url.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { shareable } from '#plan/link/shareable.ts'
import { type Item, isSet, type Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import type { Size } from './row.ts'

const RIDES = 20
const AIMS = { ridge: 1500, ridgeBare: 650, ratio: 0.45 }

/** How long links are, beside what the same ride takes as JSON through DEFLATE and base64url. */
export default function benchLink(): Size[] {
  const seeds = Array.from({ length: RIDES }, (_, i) => i + 1)
  const ratios = seeds.map((seed) => ratioOf(plausibleRide(seed))).sort((a, b) => a - b)
  const median = (ratios[RIDES / 2 - 1]! + ratios[RIDES / 2]!) / 2
  const [spark, ridge] = [demoRide('spark'), demoRide('ridge')]
  return [
    sized('link, demo A (20 min)', spark),
    sized('link, demo A without cues, titles and artists', bare(spark)),
    sized('link, demo B (45 min)', ridge, AIMS.ridge),
    sized('link, demo B without cues, titles and artists', bare(ridge), AIMS.ridgeBare),
    {
      what: `link ÷ yardstick, median of ${RIDES} generated rides`,
      size: Math.round(median * 1000) / 1000,
      aim: AIMS.ratio,
      note: `from ${ratios[0]!.toFixed(3)} to ${ratios.at(-1)!.toFixed(3)}`,
    },
  ]
}

const yardstick = (ride: Ride): number =>
  toBase64url(deflateSync(new TextEncoder().encode(JSON.stringify(shareable(ride))), { level: 9 })).length

const ratioOf = (ride: Ride): number => encodeLink(ride).length / yardstick(ride)

const sized = (what: string, ride: Ride, aim?: number): Size => ({
  what,
  size: encodeLink(ride).length,
  unit: 'characters',
  ...(aim !== undefined && { aim }),
  note: `JSON through DEFLATE: ${yardstick(ride)}; ${ratioOf(ride).toFixed(2)} of it`,
})

/** The plan alone: no words to say, no songs by name. */
function bare(ride: Ride): Ride {
  const { aim: _aim, ...rest } = ride
  return {
    ...rest,
    title: '',
    sections: ride.sections.map(({ title: _title, ...section }) => {
      const { song } = section
      if (!song) return { ...section, blocks: section.blocks.map(silent) }
      const { artist: _artist, ...nameless } = song
      return { ...section, song: { ...nameless, title: '' }, blocks: section.blocks.map(silent) }
    }),
  }
}

const silent = (item: Item): Item =>
  isSet(item) ? { ...item, parts: item.parts.map((part) => ({ ...part, cues: [] })) } : { ...item, cues: [] }
