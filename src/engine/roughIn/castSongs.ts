import type { Constants } from '#engine/constants.ts'
import type { Energy } from '#engine/loudness/guessEnergy.ts'
import type { Ride, StrikesPerBeat } from '#plan/model.ts'
import { type Aim, LIKED } from './aims.ts'
import type { Place } from './arc.ts'
import type { Random } from './seededRandom.ts'
import type { Stretch } from './stretches.ts'
import { allowedStyles, type Style, strikesFor, WARM_UP_STYLES } from './styles.ts'

/** What one song is ridden as, and how its beat is. */
export interface Part {
  style: Style
  strikes: StrikesPerBeat
  /** False where no strikes bring the legs into the style's window, so the song is ridden off the beat. */
  onBeat: boolean
}

interface Casting {
  stretches: readonly Stretch[]
  places: readonly Place[]
  ride: Pick<Ride, 'avoidMoves'>
  aim: Aim
  rules: Constants
  random: Random
  /** How much drive each song has, as far as it is known. */
  energies?: readonly (Energy | undefined)[]
}

/** How much it counts against a style that the song before has it, and each other time it comes (common practice: variety). */
const AGAIN = 1.6
const EACH_TIME = 0.5
/** How much chance may turn. */
const CHANCE = 1

/** A style for every open song: one its tempo suits, after its place in the arc, the aim, and what came before. Null for the others. */
export function castSongs({ stretches, places, ride, aim, rules, random, energies = [] }: Casting): (Part | null)[] {
  const used = new Map<Style, number>()
  let before: Style | null = null
  let worked = false
  const work = allowedStyles(ride.avoidMoves)
  return stretches.map(({ section, open }, index) => {
    const { role, intensity } = places[index]!
    if (!open || !section.song) return null
    const suits = (style: Style): Part | null => {
      const strikes = strikesFor(section.song!, style, rules)
      return strikes === undefined ? null : { style, strikes, onBeat: section.song!.grid !== undefined }
    }
    if (role === 'warmUp') return first(WARM_UP_STYLES, suits) ?? offBeat('warmUp')
    if (role === 'recovery') return suits('recover') ?? offBeat('recover')
    if (role === 'coolDown') return suits('coolDown') ?? offBeat('coolDown')
    const likes = (style: Style): number =>
      (LIKED[aim][style] ?? 0) +
      (style === before ? -AGAIN : 0) -
      EACH_TIME * (used.get(style) ?? 0) +
      placeLikes(style, { opening: !worked, finish: role === 'finish', intensity }) +
      driveLikes(style, energies[index]) +
      CHANCE * random()
    const [best] = work
      .map((style) => ({ style, likes: likes(style), part: suits(style) }))
      .sort((a, b) => Number(b.part !== null) - Number(a.part !== null) || b.likes - a.likes)
    const part = best!.part ?? offBeat(best!.style)
    used.set(part.style, (used.get(part.style) ?? 0) + 1)
    before = part.style
    worked = true
    return part
  })
}

/** The first work is a seated hill, not fast legs; pushes and surges belong to the peaks (common practice). */
function placeLikes(style: Style, { opening, finish, intensity }: { opening: boolean; finish: boolean; intensity: number }): number {
  const hard = style === 'push' || style === 'surge'
  if (opening) return style === 'climb' ? 3 : hard ? -2 : 0
  if (finish) return hard ? 1.2 : style === 'climb' ? 0.8 : 0
  return hard ? intensity - 0.5 : 0
}

/** How much a step of energy above or below the middle counts (common practice): driving songs carry pushes and fast legs, calm ones heavy or steady work. */
const DRIVE: Partial<Record<Style, number>> = { push: 0.5, surge: 0.5, run: 0.25, jumps: 0.25, climb: -0.25, tempo: -0.25 }

const driveLikes = (style: Style, energy: Energy | undefined): number => (energy === undefined ? 0 : (DRIVE[style] ?? 0) * (energy - 3))

const offBeat = (style: Style): Part => ({ style, strikes: null, onBeat: false })

const first = (styles: readonly Style[], suits: (style: Style) => Part | null): Part | null => {
  for (const style of styles) {
    const part = suits(style)
    if (part) return part
  }
  return null
}
