import type { Seconds } from '#units/units.ts'

/** One way to play a section: the seconds it adds (less than 0: takes) and what it costs. */
export interface Choice {
  seconds: Seconds
  cost: number
}

/** Which choice each section takes. */
export interface Picked {
  choices: number[]
  seconds: Seconds
  cost: number
}

interface Sums {
  /** The cheapest inside the bounds. */
  inside: Picked | null
  /** The nearest below and above them, the cheapest of those. */
  below: Picked | null
  above: Picked | null
}

/** Sums nearer than this count as one while they are built up; the bounds are held exactly. */
const GRAIN: Seconds = 0.01
/** Sums further outside than this are dropped on the way. */
const REACH: Seconds = 120

interface State extends Choice {
  changed: number
  choice: number
  before: State | null
}

/**
 * Picks one choice for every section so that the seconds come to a sum from `low` to `high` at
 * the least cost; of equal costs the fewest sections off their first choice (which stands for
 * "as it is"), then the longer sum. Cost: sections × choices × sums a hundredth of a second
 * apart.
 */
export function cheapestSum(sections: readonly (readonly Choice[])[], low: Seconds, high: Seconds): Sums {
  const least = remaining(sections, Math.min)
  const most = remaining(sections, Math.max)
  // Where nothing reaches the bounds, the nearest there is must not be dropped.
  const highest = Math.max(high, least[0]!) + REACH
  const lowest = Math.min(low, most[0]!) - REACH
  let states = new Map<number, State>([[0, { seconds: 0, cost: 0, changed: 0, choice: 0, before: null }]])
  for (const [i, choices] of sections.entries()) {
    const next = new Map<number, State>()
    for (const before of states.values()) {
      for (const [choice, { seconds, cost }] of choices.entries()) {
        const sum = before.seconds + seconds
        if (sum + least[i + 1]! > highest || sum + most[i + 1]! < lowest) continue
        keep(next, { seconds: sum, cost: before.cost + cost, changed: before.changed + (choice > 0 ? 1 : 0), choice, before })
      }
    }
    states = next
  }
  return nearest([...states.values()], low, high)
}

/** The least or most the sections from one on can add. */
function remaining(sections: readonly (readonly Choice[])[], pick: (...values: number[]) => number): Seconds[] {
  const sums = [0]
  for (const choices of [...sections].reverse()) sums.unshift(sums[0]! + pick(...choices.map(({ seconds }) => seconds)))
  return sums
}

function keep(states: Map<number, State>, state: State): void {
  const grain = Math.round(state.seconds / GRAIN)
  const held = states.get(grain)
  if (held === undefined || isCheaper(state, held)) states.set(grain, state)
}

function isCheaper(a: State, b: State): boolean {
  if (Math.abs(a.cost - b.cost) > 1e-9 * Math.max(1, a.cost)) return a.cost < b.cost
  if (a.changed !== b.changed) return a.changed < b.changed
  return a.seconds > b.seconds
}

function nearest(states: readonly State[], low: Seconds, high: Seconds): Sums {
  let inside: State | null = null
  let below: State | null = null
  let above: State | null = null
  for (const state of states) {
    if (state.seconds < low) {
      if (below === null || state.seconds > below.seconds) below = state
    } else if (state.seconds > high) {
      if (above === null || state.seconds < above.seconds) above = state
    } else if (inside === null || isCheaper(state, inside)) inside = state
  }
  return { inside: picked(inside), below: picked(below), above: picked(above) }
}

function picked(last: State | null): Picked | null {
  if (last === null) return null
  const choices: number[] = []
  for (let state = last; state.before !== null; state = state.before) choices.unshift(state.choice)
  return { choices, seconds: last.seconds, cost: last.cost }
}
