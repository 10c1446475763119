import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseRide } from '#plan/document/parseRide.ts'
import type { Ride } from '#plan/model.ts'

/** The two rides the page offers to a new user. */
export const DEMO_RIDES = { spark: 'twenty-minute-spark', ridge: 'ridge-and-return' } as const

/** A demo ride as its file holds it. */
export function demoRide(name: keyof typeof DEMO_RIDES): Ride {
  // Not by `new URL(…, import.meta.url)`: under a DOM that is rewritten into an address of the page.
  const file = join(import.meta.dirname, '../../public/demo', `${DEMO_RIDES[name]}.ride.json`)
  const parsed = parseRide(JSON.parse(readFileSync(file, 'utf8')))
  if (!parsed.ok) throw new Error(`The demo ride ${name} does not parse.`)
  return parsed.ride
}
