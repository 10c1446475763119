import type { Constants } from '#engine/constants.ts'
import type { Energy } from '#engine/loudness/guessEnergy.ts'
import { type Level, type Ride, type Song, type StrikesPerBeat, tempoOf } from '#plan/model.ts'
import { type Aim, LIKED } from './aims.ts'
import type { Place } from './arc.ts'
import { type Recipe, recipesFor } from './recipes.ts'
import type { Random } from './seededRandom.ts'
import { type EasyStyle, type Style, strikesFor, strikesInBounds } from './styles.ts'

/** What one song is ridden as, and how its beat is. */
export interface Part {
  style: Style
  strikes: StrikesPerBeat
  /** False where no strikes bring the legs where they are wanted, so the song is ridden off the beat. */
  onBeat: boolean
}

/** What songs before have been ridden as. */
export interface Used {
  recipes: ReadonlyMap<string, number>
  styles: ReadonlyMap<Style, number>
  before: Recipe | null
}

interface Casting {
  song: Song
  place: Place
  ride: Pick<Ride, 'avoidMoves' | 'level'>
  aim: Aim
  rules: Constants
  random: Random
  /** How much drive the song has, where that is known. */
  energy: Energy | undefined
  used: Used
}

const EASY: Partial<Record<Place['role'], readonly EasyStyle[]>> = {
  warmUp: ['warmUp', 'lowHill'],
  recovery: ['recover'],
  coolDown: ['coolDown'],
}

/** What a song that is no work is ridden as; null for work. */
export function castEasy(song: Song, { role }: Place, rules: Constants, level: Level): (Part & { style: EasyStyle }) | null {
  const styles = EASY[role]
  if (!styles) return null
  for (const style of styles) {
    const strikes = strikesFor(song, style, rules)
    if (strikes !== undefined) return { style, strikes, onBeat: song.grid !== undefined }
  }
  // The beat goes before the cadence an easy song is wanted at, inside what the rules let legs turn at; rolling out, it does not.
  const strikes = role === 'coolDown' ? undefined : strikesInBounds(song, rules, level, true)
  return { style: styles[0]!, strikes: strikes ?? null, onBeat: strikes !== undefined }
}

/** How much it counts against a recipe that the song before has its style or itself, and each other time either comes (common practice: variety). */
const AGAIN = { style: 1.2, recipe: 3 } as const
const EACH_TIME = { style: 0.4, recipe: 1.5 } as const
/** Rounds of short work and short recovery are what trained riders come for (common practice). */
const ROUNDS = 1.5
/** How much chance may turn. */
const CHANCE = 1

/** The ways a song of work may be ridden, the best first: those its tempo suits, after its place in the arc, the aim, and what came before. */
export function rankRecipes({ song, place, ride, aim, rules, random, energy, used }: Casting): { recipe: Recipe; part: Part }[] {
  const strikes = strikesInBounds(song, rules, ride.level)
  const rpm = song.grid && strikes ? (tempoOf(song.grid) * strikes) / 2 : null
  // In three a move of eight counts falls across the phrases.
  const counted = song.grid?.beatsPerBar === 4
  const likes = (recipe: Recipe): number =>
    (LIKED[aim][recipe.style] ?? 0) +
    (recipe.move ? (aim === 'rhythm' ? 1.6 : 0.8) : 0) -
    (recipe.style === used.before?.style ? AGAIN.style : 0) -
    (recipe === used.before ? AGAIN.recipe : 0) -
    EACH_TIME.style * (used.styles.get(recipe.style) ?? 0) -
    EACH_TIME.recipe * (used.recipes.get(recipe.id) ?? 0) +
    (recipe.rounds && ride.level === 'advanced' ? ROUNDS : 0) +
    placeLikes(recipe, place, used.before === null) +
    driveLikes(recipe.style, energy) +
    CHANCE * random()
  return recipesFor(rpm, ride, counted, place.role === 'finish')
    .map((recipe) => ({ recipe, likes: likes(recipe) }))
    .sort((a, b) => b.likes - a.likes)
    .map(({ recipe }) => ({ recipe, part: { style: recipe.style, strikes: strikes ?? null, onBeat: rpm !== null } }))
}

/** The first work is a seated hill without a move, not fast legs; pushes and surges belong to the peaks (common practice). */
function placeLikes({ style, move }: Recipe, { intensity }: Place, opening: boolean): number {
  const hard = style === 'push' || style === 'surge'
  if (opening) return (style === 'climb' ? 3 : hard ? -2 : 0) - (move ? 2 : 0)
  return hard ? intensity - 0.5 : 0
}

/** How much a step of energy above or below the middle counts (common practice): driving songs carry pushes and fast legs, calm ones heavy or steady work. */
const DRIVE: Partial<Record<Style, number>> = { push: 0.5, surge: 0.5, run: 0.25, jumps: 0.25, climb: -0.25, tempo: -0.25 }

const driveLikes = (style: Style, energy: Energy | undefined): number => (energy === undefined ? 0 : (DRIVE[style] ?? 0) * (energy - 3))
