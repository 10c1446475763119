import type { en } from '#words/en/index.ts'
import { clock, effort, number, percent } from '#words/forms.ts'
import { measures } from './measures.ts'

type About = Parameters<typeof en.readOut.aboutEffort>[0]

const about = ({ value, low, high }: About, told: (value: number) => string, unit = '') =>
  `etwa ${told(value)}${unit} (${told(low)} bis ${told(high)})`
const tenths = (value: number) => number(value, 1)

export const readOut: typeof en.readOut = {
  name: 'die Kurve ablesen',
  place: ({ at, song, eight, of, unit }) =>
    [clock(at), song, eight === null ? '' : `${unit === 6 ? 'Sechser' : 'Achter'} ${number(eight)} von ${number(of)}`]
      .filter(Boolean)
      .join(', '),
  nothing: 'nichts geplant',
  planned: 'geplante Belastung',
  estimated: 'geschätzte Belastung',
  cadence: 'Trittfrequenz',
  resistance: 'Widerstand',
  heart: 'Herzfrequenz',
  reserve: 'Reserve in den Beinen',
  effort: ({ level }) => effort(level),
  rpm: ({ rpm }) => measures.rpm(rpm),
  still: 'Beine still',
  aboutEffort: (range) => about(range, tenths),
  aboutHeart: (range) => about(range, (value) => number(value, 0), ' bpm'),
  aboutReserve: (range) => about(range, percent),
  whose: ({ rider }) => `Schätzwerte für ${rider}.`,
  spoken: ({ place, block, rows }) => `${place}. ${[block, ...rows].join(', ')}.`,
}
