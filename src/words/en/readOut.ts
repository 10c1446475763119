import { clock, effort, number, percent } from '#words/forms.ts'
import { measures } from './measures.ts'

/** What stands in the chart at one moment, under the pointer or by the keys. */

interface About {
  value: number
  low: number
  high: number
}

const about = ({ value, low, high }: About, told: (value: number) => string, unit = '') =>
  `about ${told(value)}${unit} (${told(low)} to ${told(high)})`
const tenths = (value: number) => number(value, 1)

export const readOut = {
  name: 'read the chart',
  /** "12:34, Low Tide, eight 3 of 12" */
  place: ({ at, song, eight, of, unit }: { at: number; song: string; eight: number | null; of: number; unit: number }) =>
    [clock(at), song, eight === null ? '' : `${unit === 6 ? 'six' : 'eight'} ${number(eight)} of ${number(of)}`].filter(Boolean).join(', '),
  nothing: 'nothing planned',
  planned: 'planned effort',
  estimated: 'estimated effort',
  cadence: 'cadence',
  resistance: 'resistance',
  heart: 'heart rate',
  reserve: 'left in the legs',
  effort: ({ level }: { level: number }) => effort(level),
  rpm: ({ rpm }: { rpm: number }) => measures.rpm(rpm),
  still: 'legs still',
  aboutEffort: (range: About) => about(range, tenths),
  aboutHeart: (range: About) => about(range, (value) => number(value, 0), ' bpm'),
  aboutReserve: (range: About) => about(range, percent),
  /** Whose estimates they are. */
  whose: ({ rider }: { rider: string }) => `Estimates for ${rider}.`,
  spoken: ({ place, block, rows }: { place: string; block: string; rows: readonly string[] }) =>
    `${place}. ${[block, ...rows].join(', ')}.`,
}
