import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import process from 'node:process'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { shareable } from '#plan/link/shareable.ts'
import { CURRENT_SCHEMA, type Ride } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'
import { demoRide } from '#tests/support/demoRides.ts'

// Links that lie in mailboxes. They have to open for ever and give the ride that was sent, whatever is changed: a link that no
// longer does is a fault, and the file beside this is never made again for it. `KEEP_LINKS=1` adds the first ones of a new format.

interface Sent {
  link: string
  ride: Ride
}

const FILE = join(import.meta.dirname, 'sentBefore.json')

const toKeep = (): Ride[] => [
  { ...blankRide({ newId: () => 'blank', title: 'Saturday at nine', slotMinutes: 45, level: 'mixed' }) },
  demoRide('spark'),
  ...fc.sample(arbitraryRide({ sections: 2, items: 3, parts: 2 }), { seed: 5, numRuns: 6 }),
]

if (process.env.KEEP_LINKS && !existsSync(FILE)) {
  const sent = toKeep().map((ride): Sent => ({ link: encodeLink(ride), ride: shareable(ride) }))
  writeFileSync(FILE, `[\n${sent.map((one) => JSON.stringify(one)).join(',\n')}\n]\n`)
}

const sent: Sent[] = JSON.parse(readFileSync(FILE, 'utf8'))

it('has links to a ride that is hardly begun, to a whole one, and to some with everything a ride may hold', () => {
  expect(sent.length).toBeGreaterThanOrEqual(8)
})

it.each(sent)('opens $link.length letters as they were sent', ({ link, ride }) => {
  const opened = decodeLink(link)
  expect(opened.ok && JSON.parse(JSON.stringify(opened.ride))).toEqual({ ...ride, schema: CURRENT_SCHEMA })
})
