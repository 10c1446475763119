import { computeRide } from '#engine/computeRide.ts'
import { taughtOf } from '#engine/log/taughtOf.ts'
import { DEFAULT_RIDERS } from '#plan/defaults.ts'
import { type Backup, writeBackup } from '#plan/kept/backup.ts'
import { profileOfBike } from '#plan/kept/profile.ts'
import { namedVersion, receivedVersion, sentVersion } from '#plan/kept/version.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { open } from '#plan/link/envelope.ts'
import type { Ride } from '#plan/model.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import { smallRide } from '#tests/support/smallRide.ts'

/** Rides that the hostile ones are made from: the demo rides, a small one with a set, and three as people write them. */
export const RIDES: readonly Ride[] = [demoRide('spark'), demoRide('ridge'), smallRide(), ...[1, 2, 3].map(plausibleRide)]
export const LINKS: readonly string[] = RIDES.map(encodeLink)
/** A backup of everything that is kept, as text. */
const BACKUP = JSON.stringify(writeBackup(everything()))
/** Rides as files, and, as often as two of them, a backup of everything. */
export const FILES: readonly string[] = [...RIDES.map((ride) => JSON.stringify(ride)), BACKUP, BACKUP]

function everything(): Backup {
  const [, , small, plausible] = RIDES as [Ride, Ride, Ride, Ride]
  const report = computeRide(plausible)
  return {
    rides: [small, plausible].map((ride, i) => ({ ride, updated: i })),
    versions: [namedVersion(small, 'before the class', 'v1'), sentVersion(plausible), receivedVersion(small, plausible.id)].map(
      (version, at) => ({ ...version, at }),
    ),
    profiles: [
      profileOfBike(LEVELS_BIKE),
      { kind: 'riders', id: 'regulars', name: 'Tuesday', riders: [...DEFAULT_RIDERS] },
      { kind: 'rules', id: 'house', name: 'house', houseRules: { longestStanding: 60 }, avoidMoves: ['jump'] },
    ],
    taught: [taughtOf({ ride: plausible, report }, { id: 't1', day: '2026-01-15' })],
    songs: plausible.sections.flatMap(({ song }, i) => (song ? [{ id: `s${i}`, song: { ...song, id: `s${i}` } }] : [])),
    formPoints: ['Light hands.'],
  }
}

/** The bytes inside each link, to be changed and sealed again. */
export const PAYLOADS: readonly Uint8Array[] = LINKS.map((link) => {
  const opened = open(link)
  if (!opened.ok) throw new Error(`A link of the corpus does not open: ${opened.fault}.`)
  return opened.payload
})
