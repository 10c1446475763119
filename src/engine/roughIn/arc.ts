import type { Constants } from '#engine/constants.ts'
import type { Energy } from '#engine/loudness/guessEnergy.ts'
import type { Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import type { Stretch } from './stretches.ts'

/** What a song is for in the arc of a class. */
type Role = 'warmUp' | 'work' | 'recovery' | 'finish' | 'coolDown'

/** One song's place in the arc. */
export interface Place {
  role: Role
  /** How hard it may become, 0 to 1: the waves of the class and their growth. */
  intensity: number
}

/** The times between which a class works, on the ride clock, and what there is to plan. */
export interface Arc {
  places: Place[]
  /** Before this second nothing is hard, after the other one everything is easy. */
  warmUpEnd: Seconds
  coolDownStart: Seconds
  waves: number
}

/** Where the finish is looked for, as a share of the class: in the middle of 80–88 % (common practice). */
const FINISH = 0.84
/** The least a finish needs of its song. */
const FINISH_ROOM: Seconds = 140
/** Where a class comes down in between, as shares of it (common practice). */
const HALF_WAY = [0.47] as const
const TWICE = [0.35, 0.65] as const
/** From this many minutes a class comes down twice, and below this many not for a whole song. */
const LONG_CLASS = 55
const SHORT_CLASS = 26
/** Fewest songs of work that one of them can be given up of. */
const SONGS_FOR_RECOVERY = 5

/** How far from those places a song may lie, as a share of the class, that is taken because it has the drive for the finish, or the calm for coming down (common practice). */
const REACH = { finish: 0.04, recovery: 0.08 } as const
/** A song whose drive is not known is taken to have as much as most. */
const USUAL_ENERGY: Energy = 3

/** A little more than the rule asks, so that rounding to phrases does not fall short of it. */
const ROOM = 1.02

/**
 * The arc: a warm-up, waves that grow, a recovery song about half-way (two in a long class), the
 * finish, a cool-down. Shares and minutes are the house rules'; the places are common practice.
 *
 * Where it is known how much drive the songs have, the most driving ones carry the peaks and the calmest the recovery.
 *
 * @param stretches every section of the ride in order, at least one
 * @param energies of their songs, as far as they are known
 */
export function arcOf(stretches: readonly Stretch[], ride: Ride, rules: Constants, energies: readonly (Energy | undefined)[] = []): Arc {
  const start = ride.briefingSeconds
  const end = stretches.at(-1)!.to
  const total = end - start
  const full = ride.slotMinutes >= rules.fullClassMinutes
  const need = (share: number, minutes: number) => ROOM * Math.max((share / 100) * total, full ? Math.min(minutes * 60, total / 4) : 0)
  const warmUpEnd = start + need(rules.warmUpShare, rules.warmUpMinutes)
  const coolDownStart = end - need(rules.coolDownShare, rules.coolDownMinutes)

  const roles = stretches.map((stretch): Role => {
    if (warmUpEnd - stretch.one >= (stretch.to - stretch.one) / 2) return 'warmUp'
    return stretch.to - coolDownStart > (stretch.to - stretch.one) * 0.6 ? 'coolDown' : 'work'
  })
  const work = roles.flatMap((role, index) => (role === 'work' ? [index] : []))
  const energy = (index: number): number => energies[index] ?? USUAL_ENERGY
  const at = (share: number, among: readonly number[], reach: number, wants: (index: number) => number) =>
    nearest(stretches, among, start + share * total, reach * total, wants)
  // A rest, a set-up and the effort itself have to lie before the cool-down.
  const roomy = work.filter((index) => Math.min(stretches[index]!.to, coolDownStart) - stretches[index]!.one >= FINISH_ROOM)
  const finish = at(FINISH, roomy.length > 0 ? roomy : work, REACH.finish, energy)
  if (finish !== undefined) roles[finish] = 'finish'
  const minutes = total / 60
  // Neither the first song of work nor the one before the finish is where riders need to come down.
  const inside = work.filter((index) => index > work[0]! && index < (finish ?? 0) - 1)
  const shares = minutes >= LONG_CLASS ? TWICE : minutes >= SHORT_CLASS && work.length >= SONGS_FOR_RECOVERY ? HALF_WAY : []
  for (const share of shares) {
    const index = at(share, inside, REACH.recovery, (each) => -energy(each))
    if (index !== undefined) roles[index] = 'recovery'
  }
  return { ...withWaves(roles, finish, energy), warmUpEnd, coolDownStart }
}

/** Of the stretches whose middle lies within reach of a time the one that is wanted most, of equals and of others the nearest. */
function nearest(
  stretches: readonly Stretch[],
  among: readonly number[],
  time: Seconds,
  reach: Seconds,
  wants: (index: number) => number,
): number | undefined {
  const distance = (index: number) => Math.abs((stretches[index]!.one + stretches[index]!.to) / 2 - time)
  const nearestFirst = [...among].sort((a, b) => distance(a) - distance(b))
  const within = nearestFirst.filter((index) => distance(index) <= reach)
  return within.sort((a, b) => wants(b) - wants(a))[0] ?? nearestFirst[0]
}

/** Songs a wave has in the middle (common practice: three waves in a class of twelve or thirteen songs). */
const WAVE = 2.6

/**
 * Work between two easier songs rises as one wave or more, to its most driving song where one is known, else to its
 * last; every wave's highest is higher than that of the one before, the finish highest.
 */
function withWaves(roles: readonly Role[], finish: number | undefined, energy: (index: number) => number): Pick<Arc, 'places' | 'waves'> {
  const waves = runsOf(roles).flatMap(inWaves)
  const places = roles.map((role): Place => ({ role, intensity: 0 }))
  for (const [wave, songs] of waves.entries()) {
    const peak = waves.length === 1 ? 1 : 0.7 + (0.3 * wave) / (waves.length - 1)
    const risingTo = [...songs].sort((a, b) => energy(a) - energy(b))
    for (const [place, index] of risingTo.entries()) {
      const rise = songs.length === 1 ? 1 : 0.5 + (0.5 * place) / (songs.length - 1)
      places[index]!.intensity = index === finish ? 1 : finish !== undefined && index > finish ? AFTER_FINISH : peak * rise
    }
  }
  return { places, waves: waves.length }
}

/** A song between the finish and the cool-down brings riders down. */
const AFTER_FINISH = 0.2

/** Songs of work that follow one another. */
function runsOf(roles: readonly Role[]): number[][] {
  const runs: number[][] = []
  for (const [index, role] of roles.entries()) {
    if (role !== 'work' && role !== 'finish') continue
    const before = roles[index - 1]
    if (before === 'work' || before === 'finish') runs.at(-1)!.push(index)
    else runs.push([index])
  }
  return runs
}

/** A run in waves of nearly the same number of songs, longer ones first. */
function inWaves(run: readonly number[]): number[][] {
  const count = Math.max(1, Math.round(run.length / WAVE))
  return Array.from({ length: count }, (_, i) => run.slice(Math.ceil((i * run.length) / count), Math.ceil(((i + 1) * run.length) / count)))
}
