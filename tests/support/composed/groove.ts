import { pick, type Random } from '#engine/roughIn/seededRandom.ts'

export type Drum = 'kick' | 'snare' | 'clap' | 'rim' | 'hat' | 'open' | 'ride' | 'shaker' | 'tom' | 'crash'

/** One drum's hits through two bars, each a step and how hard, 0 to 1. */
export interface DrumLine {
  drum: Drum
  hits: [step: number, force: number][]
}

/** How a song moves. Steps are counted through two bars. */
export interface Groove {
  feel: Feel
  bpm: number
  meter: '4/4' | '3/4' | '6/8'
  beatsPerBar: 4 | 3 | 2
  stepsPerBeat: 4 | 3
  /** How far the second half of a beat (or, `swungSixteenths`, of half a beat) is late: 0 straight, 1 a triplet. */
  swing: number
  lines: DrumLine[]
  kick: number[]
}

type Feel = keyof typeof FEELS

/** How common a feel is made, and the tempi it is played at: common practice of dance, rock and pop. */
const FEELS = {
  backbeat: { share: 40, from: 74, to: 184 },
  four: { share: 20, from: 108, to: 142 },
  half: { share: 8, from: 126, to: 162 },
  slowHalf: { share: 3, from: 64, to: 84 },
  broken: { share: 5, from: 156, to: 180 },
  everyBeat: { share: 4, from: 96, to: 150 },
  train: { share: 3, from: 90, to: 132 },
  dembow: { share: 6, from: 82, to: 112 },
  clave: { share: 5, from: 84, to: 132 },
  soft: { share: 8, from: 58, to: 112 },
  waltz: { share: 9, from: 80, to: 184 },
  six: { share: 10, from: 44, to: 88 },
} as const

/** Kicks a backbeat may have besides the one: step and how often. */
const KICKS: [number, number][] = [
  [2, 0.08],
  [3, 0.15],
  [6, 0.3],
  [7, 0.15],
  [8, 0.6],
  [10, 0.35],
  [11, 0.15],
  [14, 0.15],
]

const every = (step: number, of: number, from = 0): number[] =>
  Array.from({ length: Math.ceil((of - from) / step) }, (_, i) => from + i * step)

/** A groove drawn at random: feel, tempo, metre and what the drums do. */
export function grooveOf(random: Random): Groove {
  const feel = drawn(random)
  const { from, to } = FEELS[feel]
  const bpm = Number((from * (to / from) ** random()).toFixed(random() < 0.3 ? 0 : 2))
  const six = feel === 'six'
  const beatsPerBar = six ? 2 : feel === 'waltz' ? 3 : 4
  const stepsPerBeat = six ? 3 : 4
  const bar = beatsPerBar * stepsPerBeat
  const first = barOf(feel, random)
  const second = random() < 0.4 ? { ...first, kick: barOf(feel, random).kick } : first
  const lines = [...both(first, second, bar, random), ...cymbals(feel, bar, random)]
  const straight = six || feel === 'four' || random() > 0.18
  return {
    feel,
    bpm,
    meter: six ? '6/8' : beatsPerBar === 3 ? '3/4' : '4/4',
    beatsPerBar,
    stepsPerBeat,
    swing: straight ? 0 : 0.3 + 0.7 * random(),
    lines,
    kick: [...first.kick, ...second.kick.map((step) => step + bar)],
  }
}

function drawn(random: Random): Feel {
  const names = Object.keys(FEELS) as Feel[]
  let left = random() * names.reduce((sum, name) => sum + FEELS[name].share, 0)
  for (const name of names) {
    left -= FEELS[name].share
    if (left < 0) return name
  }
  return 'backbeat'
}

interface Bar {
  kick: number[]
  snare: number[]
  ghosts: number[]
}

/** Kick and snare of one bar. */
function barOf(feel: Feel, random: Random): Bar {
  const some = (steps: readonly [number, number][]) => steps.filter(([, often]) => random() < often).map(([step]) => step)
  const ghosts = random() < 0.25 ? some(([7, 9, 15, 1] as const).map((step) => [step, 0.4])) : []
  const one = random() < 0.95 ? [0] : []
  switch (feel) {
    case 'backbeat':
      return { kick: [...one, ...some(KICKS)], snare: [4, 12], ghosts }
    case 'four':
      return { kick: [0, 4, 8, 12], snare: random() < 0.8 ? [4, 12] : random() < 0.5 ? [12] : [], ghosts: [] }
    case 'half':
    case 'slowHalf':
      return { kick: [0, ...some(KICKS.filter(([step]) => step !== 8))], snare: [8], ghosts }
    case 'broken':
      return { kick: [0, 10, ...some([[6, 0.2]])], snare: [4, 12], ghosts: some([7, 9].map((step) => [step, 0.6])) }
    case 'everyBeat':
      return { kick: [...one, ...some(KICKS)], snare: [0, 4, 8, 12], ghosts: [] }
    case 'train':
      return { kick: random() < 0.5 ? [0, 8] : [0, 4, 8, 12], snare: [2, 6, 10, 14], ghosts: every(1, 16) }
    case 'dembow':
      return { kick: random() < 0.7 ? [0, 4, 8, 12] : [0, 8], snare: [3, 6, 11, 14], ghosts: [] }
    case 'clave':
      return {
        kick: [
          0,
          ...some([
            [6, 0.5],
            [8, 0.5],
            [14, 0.5],
          ]),
        ],
        snare: random() < 0.5 ? [0, 6, 12] : [4, 10, 12],
        ghosts: [],
      }
    case 'soft':
      return { kick: random() < 0.5 ? [0] : [0, 8], snare: random() < 0.6 ? [4, 12] : [8], ghosts: [] }
    case 'waltz':
      return {
        kick: [
          0,
          ...some([
            [6, 0.3],
            [10, 0.15],
          ]),
        ],
        snare: random() < 0.5 ? [4, 8] : random() < 0.5 ? [8] : [4],
        ghosts: [],
      }
    case 'six':
      return {
        kick: [
          0,
          ...some([
            [2, 0.2],
            [4, 0.2],
            [5, 0.35],
          ]),
        ],
        snare: [3],
        ghosts: some([
          [2, 0.15],
          [5, 0.15],
        ]),
      }
  }
}

function both(first: Bar, second: Bar, bar: number, random: Random): DrumLine[] {
  const through = (of: (bar: Bar) => number[], force: number): [number, number][] =>
    [...of(first), ...of(second).map((step) => step + bar)].map((step) => [step, force])
  const snare = pick(random, ['snare', 'snare', 'snare', 'clap', 'rim'] as const)
  return [
    { drum: 'kick', hits: through(({ kick }) => kick, 0.95) },
    { drum: snare, hits: through((one) => one.snare, snare === 'rim' ? 0.6 : 0.85) },
    { drum: 'snare', hits: through(({ ghosts }) => ghosts, 0.25) },
  ]
}

/** Hats, ride, shaker: at which steps, and whether the beat or what is between is louder. */
function cymbals(feel: Feel, bar: number, random: Random): DrumLine[] {
  const steps = 2 * bar
  if (feel === 'six') {
    return [{ drum: pick(random, ['hat', 'ride'] as const), hits: every(1, steps).map((step) => [step, step % 3 === 0 ? 0.6 : 0.4]) }]
  }
  const lines: DrumLine[] = []
  const drum = pick(random, ['hat', 'hat', 'hat', 'ride', 'shaker'] as const)
  const accent = random() < 0.8 ? 1 : 0.6
  const grid = pick(random, feel === 'soft' ? [4, 4, 2, 0] : [2, 2, 2, 2, 1, 1, 4, 0])
  if (grid > 0)
    lines.push({ drum, hits: every(grid, steps).map((step) => [step, (step % 4 === 0 ? accent : 1.6 - accent) * (0.35 + 0.2 * random())]) })
  if (random() < (feel === 'four' ? 0.75 : 0.12)) lines.push({ drum: 'open', hits: every(4, steps, 2).map((step) => [step, 0.5]) })
  if (random() < 0.15) lines.push({ drum: 'shaker', hits: every(1, steps).map((step) => [step, step % 2 === 0 ? 0.3 : 0.18]) })
  return lines
}
