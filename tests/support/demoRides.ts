import { readFileSync } from 'node:fs'
import type { Ride } from '#plan/model.ts'
import { parseRide } from '#plan/parseRide.ts'

/** The two rides the page offers to a new user. */
export const DEMO_RIDES = { spark: 'twenty-minute-spark', ridge: 'ridge-and-return' } as const

/** A demo ride as its file holds it. */
export function demoRide(name: keyof typeof DEMO_RIDES): Ride {
  const file = new URL(`../../public/demo/${DEMO_RIDES[name]}.ride.json`, import.meta.url)
  const parsed = parseRide(JSON.parse(readFileSync(file, 'utf8')))
  if (!parsed.ok) throw new Error(`The demo ride ${name} does not parse.`)
  return parsed.ride
}
