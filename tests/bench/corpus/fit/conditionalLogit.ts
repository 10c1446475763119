import type { Weights } from '#audio/dsp/scoreOf.ts'
import { seededRandom } from '#engine/roughIn/seededRandom.ts'

/** One guess of a song: its traits, and whether it is right. */
export interface Option {
  traits: readonly number[]
  right: boolean
}

/** A choice between guesses, at least one of them right. */
export interface Choice {
  options: readonly Option[]
  /** How much it counts. */
  weight: number
}

export interface Fitting {
  /** Units of the hidden layer; 0 for a plain conditional logit. */
  hidden: number
  /** How dearly large weights are paid for: this times half their squares. */
  ridge: number
  rounds: number
  /** Networks from different beginnings whose scores are averaged: what one has learnt by chance the others have not. */
  nets: number
}

/** Traits farther off count as this many deviations, as in `scoreOf`. */
const FARTHEST = 3
const RATE = 0.025

/**
 * Weights under which the right guesses are likeliest: a conditional logit (McFadden 1974) with an optional hidden
 * layer, fitted by gradient descent with moments (Adam, Kingma and Ba 2015) over all choices at once. The same
 * choices give the same weights.
 */
export function fitWeights(choices: readonly Choice[], fitting: Fitting): Weights {
  const { hidden, ridge, rounds, nets } = fitting
  const { means, deviations } = momentsOf(choices)
  const size = means.length
  const scaled = choices.map(({ options, weight }) => ({
    weight,
    right: options.map(({ right }) => right),
    rows: options.map(({ traits }) => Float64Array.from(traits, (trait, i) => clamp((trait - means[i]!) / deviations[i]!))),
  }))
  const fitOne = (seed: number): Float64Array => {
    const random = seededRandom(seed)
    const count = size + hidden * (size + 2)
    const parameters = Float64Array.from({ length: count }, (_, i) => (i < size ? 0 : (random() - 0.5) * 0.2))
    const step = makeAdam(count)
    for (let round = 1; round <= rounds; round++) {
      const slope = parameters.map((value) => ridge * value)
      for (const choice of scaled) addSlope(choice, parameters, slope, hidden)
      step(parameters, slope, round)
    }
    return parameters
  }
  return unpacked(
    Array.from({ length: nets }, (_, seed) => fitOne(seed + 1)),
    { means, deviations, hidden },
  )
}

interface Scaled {
  weight: number
  right: boolean[]
  rows: Float64Array[]
}

/** Adds how a choice's loss grows with each parameter. Parameters: direct, then each unit's weights, then biases, then what units say. */
function addSlope({ weight, right, rows }: Scaled, parameters: Float64Array, slope: Float64Array, hidden: number): void {
  const size = rows[0]!.length
  const biases = size + hidden * size
  const outs = biases + hidden
  const units = rows.map(() => new Float64Array(hidden))
  const scores = rows.map((row, i) => {
    let score = 0
    for (let j = 0; j < size; j++) score += parameters[j]! * row[j]!
    for (let h = 0; h < hidden; h++) {
      let sum = parameters[biases + h]!
      const from = size + h * size
      for (let j = 0; j < size; j++) sum += parameters[from + j]! * row[j]!
      units[i]![h] = Math.tanh(sum)
      score += parameters[outs + h]! * units[i]![h]!
    }
    return score
  })
  const top = Math.max(...scores)
  const odds = scores.map((score) => Math.exp(score - top))
  let all = 0
  let rights = 0
  for (const [i, odd] of odds.entries()) {
    all += odd
    if (right[i]) rights += odd
  }
  for (const [i, row] of rows.entries()) {
    const push = weight * (odds[i]! / all - (right[i] ? odds[i]! / rights : 0))
    if (Math.abs(push) < 1e-7) continue
    for (let j = 0; j < size; j++) slope[j]! += push * row[j]!
    for (let h = 0; h < hidden; h++) {
      const unit = units[i]![h]!
      slope[outs + h]! += push * unit
      const inner = push * parameters[outs + h]! * (1 - unit * unit)
      slope[biases + h]! += inner
      const from = size + h * size
      for (let j = 0; j < size; j++) slope[from + j]! += inner * row[j]!
    }
  }
}

function makeAdam(count: number): (parameters: Float64Array, slope: Float64Array, round: number) => void {
  const first = new Float64Array(count)
  const second = new Float64Array(count)
  return (parameters, slope, round) => {
    for (let j = 0; j < count; j++) {
      first[j] = 0.9 * first[j]! + 0.1 * slope[j]!
      second[j] = 0.99 * second[j]! + 0.01 * slope[j]! ** 2
      parameters[j]! -= (RATE * (first[j]! / (1 - 0.9 ** round))) / (Math.sqrt(second[j]! / (1 - 0.99 ** round)) + 1e-8)
    }
  }
}

function momentsOf(choices: readonly Choice[]): { means: number[]; deviations: number[] } {
  const rows = choices.flatMap(({ options }) => options.map(({ traits }) => traits))
  const size = rows[0]!.length
  const means = new Array<number>(size).fill(0)
  const deviations = new Array<number>(size).fill(0)
  for (const row of rows) for (let j = 0; j < size; j++) means[j]! += row[j]! / rows.length
  for (const row of rows) for (let j = 0; j < size; j++) deviations[j]! += (row[j]! - means[j]!) ** 2 / rows.length
  return { means: means.map(short), deviations: deviations.map((square) => short(Math.sqrt(square)) || 1) }
}

/** Networks side by side as one that says their mean. */
function unpacked(
  nets: readonly Float64Array[],
  { means, deviations, hidden }: { means: number[]; deviations: number[]; hidden: number },
): Weights {
  const size = means.length
  const biases = size + hidden * size
  const units = nets.flatMap((net) => Array.from({ length: hidden }, (_, h) => ({ net, h })))
  return {
    means,
    deviations,
    direct: means.map((_, j) => short(nets.reduce((sum, net) => sum + net[j]! / nets.length, 0))),
    hidden: units.map(({ net, h }) => Array.from(net.subarray(size + h * size, size + (h + 1) * size), short)),
    bias: units.map(({ net, h }) => short(net[biases + h]!)),
    out: units.map(({ net, h }) => short(net[biases + hidden + h]! / nets.length)),
  }
}

/** Four digits are more than the material can tell. */
const short = (value: number): number => Number(value.toPrecision(4))
const clamp = (value: number): number => Math.max(-FARTHEST, Math.min(FARTHEST, value))
