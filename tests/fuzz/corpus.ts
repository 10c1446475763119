import { writeBackup } from '#plan/backup.ts'
import { LEVELS_BIKE } from '#plan/defaults.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { open } from '#plan/link/envelope.ts'
import type { Ride } from '#plan/model.ts'
import { profileOfBike } from '#plan/profile.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import { smallRide } from '#tests/support/smallRide.ts'

/** Rides that the hostile ones are made from: the demo rides, a small one with a set, and three as people write them. */
export const RIDES: readonly Ride[] = [demoRide('spark'), demoRide('ridge'), smallRide(), ...[1, 2, 3].map(plausibleRide)]
export const LINKS: readonly string[] = RIDES.map(encodeLink)
/** Rides as files, and a backup of everything. */
export const FILES: readonly string[] = [...RIDES, backupOf()].map((value) => JSON.stringify(value))

function backupOf(): object {
  return writeBackup({
    rides: RIDES.slice(2, 4).map((ride, i) => ({ ride, updated: i })),
    versions: [],
    profiles: [profileOfBike(LEVELS_BIKE)],
    formPoints: ['Light hands.'],
  })
}

/** The bytes inside each link, to be changed and sealed again. */
export const PAYLOADS: readonly Uint8Array[] = LINKS.map((link) => {
  const opened = open(link)
  if (!opened.ok) throw new Error(`A link of the corpus does not open: ${opened.fault}.`)
  return opened.payload
})
