import { type Clip, clipOf } from '#plan/clip/clip.ts'
import { contentRevision } from '#plan/document/contentRevision.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { standingBefore } from '#plan/ledger/standingBefore.ts'
import type { Ride, Section, Song } from '#plan/model.ts'
import { songKey } from '#plan/songs/shelfSong.ts'
import type { Day } from '#units/day.ts'

/** What was planned over one song in one ride, as it is offered where the song is ridden again. */
export interface SongPlan {
  /** Of the ride and the section it stands in; the same for the same plan. */
  id: string
  rideId: string
  /** As the ride is called; empty where it has no name. */
  rideTitle: string
  /** Milliseconds since 1970: when the ride was changed last, or kept as it was taught. */
  at: number
  /** The section with its song, in the steps of its bike, and the total riders came to it with. */
  clip: Clip
  /** Absent where it was planned and not taught yet. */
  taught?: Taught
}

/** Classes a plan was taught in. */
interface Taught {
  /** The last of them. */
  day: Day
  times: number
  /** How the song went, 1 to 5: the latest that was given. */
  stars?: number
}

/** A ride as it is kept, with what tells whether it was taught so. */
interface KeptPlan {
  ride: Ride
  at: number
  /** `contentRevision` of the ride, where the log has entries of it; else nothing can name it. */
  revision?: string
}

/** The section a plan is of. */
export const sectionOf = ({ clip }: SongPlan): Section => clip.ride.sections[0]!

/** The song a plan is of. */
export const songOf = (plan: SongPlan): Song => sectionOf(plan).song!

/** Whether two songs are the same: the same sound where both were heard, else the same title by the same artist. */
export const isSameSong = (a: Song, b: Song): boolean =>
  (a.fingerprint !== undefined && a.fingerprint === b.fingerprint) || (a.title !== '' && songKey(a) === songKey(b))

/** Every song of a ride that has blocks, as it stands there. Cost: linear in the ride. */
export function plansIn({ ride, at, revision }: KeptPlan): KeptSongPlan[] {
  return ride.sections.flatMap((section) => {
    if (!section.song || section.blocks.length === 0) return []
    const clip = clipOf(ride, { sectionIds: [section.id] }, standingBefore(ride, section.id, 0))!
    const plan = { id: `${ride.id}.${section.id}`, rideId: ride.id, rideTitle: ride.title, at, clip }
    return [{ plan, content: contentOf(section), ...(revision !== undefined && { revision }) }]
  })
}

/** A plan before it is known whether it was taught. */
export interface KeptSongPlan {
  plan: SongPlan
  /** Equal for plans that say the same of the same song. */
  content: string
  revision?: string
}

/** The revision of a ride where the log may name it, which is what makes it worth finding. */
export const revisionInLog = (ride: Ride, log: readonly TaughtClass[]): string | undefined =>
  log.some(({ rideId }) => rideId === ride.id) ? contentRevision(ride) : undefined

/**
 * Plans with the classes they were taught in: those taught first, the latest first, then those that are only planned. A
 * plan that was carried from ride to ride is one, under the ride it was taught in last. What a class skipped it did not teach.
 */
export function joinPlans(kept: readonly KeptSongPlan[], log: readonly TaughtClass[]): SongPlan[] {
  const classes = new Map<string, TaughtClass[]>()
  for (const entry of log) {
    const key = `${entry.rideId} ${entry.revision}`
    classes.set(key, [...(classes.get(key) ?? []), entry])
  }
  const one = new Map<string, Joined>()
  for (const { plan, content, revision } of kept) {
    const entries = (revision === undefined ? undefined : classes.get(`${plan.rideId} ${revision}`)) ?? []
    const held = one.get(content) ?? { plan, rated: new Map() }
    for (const { id, day, sections } of entries) {
      const section = sections.find((other) => other.id === sectionOf(plan).id)
      if (section && section.outcome !== 'skipped') held.rated.set(id, { day, stars: section.stars, plan })
    }
    if (plan.at > held.plan.at) held.plan = plan
    one.set(content, held)
  }
  return [...one.values()].map(asTaught).sort((a, b) => byDay(a, b) || b.at - a.at)
}

interface Joined {
  plan: SongPlan
  /** By the id of the class. */
  rated: Map<string, { day: Day; stars?: number; plan: SongPlan }>
}

function asTaught({ plan, rated }: Joined): SongPlan {
  const classes = [...rated.values()].sort((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0))
  const last = classes[0]
  if (!last) return plan
  const stars = classes.find((one) => one.stars !== undefined)?.stars
  return { ...last.plan, taught: { day: last.day, times: classes.length, ...(stars !== undefined && { stars }) } }
}

const byDay = (a: SongPlan, b: SongPlan): number => {
  const [left, right] = [a.taught?.day ?? '', b.taught?.day ?? '']
  return left < right ? 1 : left > right ? -1 : 0
}

/** What is ridden over a song, and nothing of where it is kept. */
function contentOf({ song, inCount, blocks }: Section): string {
  const { title, artist, grid, strikesPerBeat } = song!
  return JSON.stringify([songKey({ title, artist }), grid?.anchors, strikesPerBeat, inCount ?? 0, withoutIds(blocks)])
}

/** A value of a document without the ids in it. */
export const withoutIds = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (key, held) => (key === 'id' || key === 'leader' || key === 'mic' ? undefined : held)))
