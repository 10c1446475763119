import { computeRide } from '#engine/computeRide.ts'
import { weekOf } from '#engine/log/weekOf.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { trainingImpulse } from '#tests/support/reference/trainingImpulse.ts'
import { ZONE_WEIGHTS, zoneScore } from '#tests/support/reference/zoneScore.ts'
import { blocksOnly } from '#tests/support/reported.ts'
import { inSeconds } from '#tests/support/smallRide.ts'
import { daysAfter } from '#units/day.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  rpe: number
  minutes: number
  daily: number[]
  minutes_in_zones: number[]
  hrr_fraction: number
  work: number[]
  recovery: number[]
}

const atEffort = (effort: number, minutes: number) => ({ ...inSeconds(60 * minutes), effort: { from: effort, to: effort } })

const MONDAY = '2026-11-23'

/** A class of an hour at the effort that makes the load. */
const taught = (day: string, load: number): TaughtClass => ({
  id: day,
  rideId: 'r',
  title: 't',
  revision: 'v',
  day,
  room: 'bikes',
  slotMinutes: 60,
  sections: [
    {
      id: 's',
      title: 's',
      song: false,
      outcome: 'taught',
      seconds: 3600,
      blocks: [{ name: 'b', terrain: 'flat', posture: 'seated', effort: load / 60, seconds: 3600 }],
    },
  ],
})

const weekWith = (daily: readonly number[]) =>
  weekOf(
    daily.flatMap((load, i) => (load > 0 ? [taught(daysAfter(MONDAY, i), load)] : [])),
    MONDAY,
  )

checkRows(
  'training load',
  rows,
  {
    'srpe.': ({ rpe, minutes }: Inputs) => computeRide(blocksOnly([atEffort(rpe, minutes)])).overall.sessionLoad,
    'foster.monotony': ({ daily }: Inputs) => weekWith(daily).monotony,
    'foster.strain': ({ daily }: Inputs) => weekWith(daily).strain,
    'cortis.meanppo': ({ work, recovery }: Inputs) =>
      10 * computeRide(blocksOnly([...work, ...recovery].map((percent) => atEffort(percent / 10, 3)))).overall.meanEffort,
  },
  {
    'edwards.1': ({ minutes_in_zones }: Inputs) => zoneScore(minutes_in_zones),
    'edwards.2': () => Object.fromEntries(ZONE_WEIGHTS.map((weight, i) => [`${50 + 10 * i}-${60 + 10 * i}`, weight])),
    'trimp.m.': ({ minutes, hrr_fraction }: Inputs) => trainingImpulse(minutes, hrr_fraction, 'men'),
    'trimp.f.': ({ minutes, hrr_fraction }: Inputs) => trainingImpulse(minutes, hrr_fraction, 'women'),
    'trimp.max.m': () => trainingImpulse(1, 1, 'men'),
  },
)
