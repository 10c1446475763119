import { pick, type Random, seededRandom } from '#engine/roughIn/seededRandom.ts'
import type { MadeSong } from '#tests/support/madeSong.ts'
import { type Groove, grooveOf } from './groove.ts'
import { type Band, makeBand, type Voice, voiceOf } from './sounds.ts'

/** A song with its beats known, and what kind it is. */
export interface ComposedSong extends MadeSong {
  bpm: number
  meter: Groove['meter']
  feel: Groove['feel']
  /** Seconds of the beats that start eight; none in three-four. */
  eights: number[]
}

/** What plays in a part of a song. */
interface Part {
  drums: boolean
  bass: boolean
  chords: boolean
  tune: boolean
  force: number
}

const PARTS: Record<'drums' | 'pad' | 'verse' | 'chorus' | 'break', Part> = {
  drums: { drums: true, bass: false, chords: false, tune: false, force: 0.8 },
  pad: { drums: false, bass: false, chords: true, tune: false, force: 0.6 },
  verse: { drums: true, bass: true, chords: true, tune: false, force: 0.85 },
  chorus: { drums: true, bass: true, chords: true, tune: true, force: 1 },
  break: { drums: false, bass: true, chords: true, tune: true, force: 0.7 },
}

/** Roots of four chords, semitones above the key: common ones of popular music. */
const PROGRESSIONS = [
  [0, 7, 9, 5],
  [9, 5, 0, 7],
  [0, 5, 9, 7],
  [2, 7, 0, 9],
  [0, 3, 5, 0],
  [9, 7, 5, 7],
  [0, 10, 5, 0],
  [0, 9, 2, 7],
  [0, 0, 5, 7],
  [9, 9, 5, 7],
]
const MINOR = [2, 4, 9]
const SCALE = [0, 2, 4, 7, 9]

/**
 * A song drawn from a seed: groove, tempo, metre, form, chords, bass, tune and sounds. Beats are a grid of constant
 * tempo which players miss by some milliseconds; parts begin on eights, where fills lead and cymbals crash, mostly.
 * The same seed gives the same samples everywhere.
 */
export function composedSong(seed: number, { seconds = 60, sampleRate = 22_050 } = {}): ComposedSong {
  const random = seededRandom(seed)
  const groove = grooveOf(random)
  const beat = 60 / groove.bpm
  const lead = random() < 0.5 ? 2 * random() : 0.1 * random()
  const pickup = random() < 0.12 ? 1 + Math.floor(2 * random()) : 0
  const samples = new Float32Array(Math.round(seconds * sampleRate))
  play(makeBand(samples, sampleRate, random), groove, random, { start: lead + pickup * beat, seconds, pickup })
  press(samples, 0.3 + 0.6 * random())

  const beats: number[] = []
  for (let n = 0; lead + n * beat < seconds - 0.02; n++) beats.push(lead + n * beat)
  const from = (every: number) => beats.filter((_, n) => n >= pickup && (n - pickup) % every === 0)
  const { bpm, meter, feel, beatsPerBar } = groove
  return { samples, sampleRate, bpm, meter, feel, beats, downbeats: from(beatsPerBar), eights: meter === '3/4' ? [] : from(8) }
}

interface Stage {
  /** Second of the first one. */
  start: number
  seconds: number
  /** Beats before it. */
  pickup: number
}

function play(band: Band, groove: Groove, random: Random, { start, seconds, pickup }: Stage): void {
  const { beatsPerBar, stepsPerBeat, bpm, swing } = groove
  const beat = 60 / bpm
  const bar = beatsPerBar * stepsPerBeat
  const loose = 0.011 * random()
  const partBars = pick(random, [8, 8, 8, 8, 4, 4, 16]) * (beatsPerBar === 2 ? 2 : 1)
  const parts = formOf(random)
  const habits = habitsOf(groove, random)
  /** Second of a step counted from the first one, as this band plays it. */
  const at = (step: number): number => {
    const half = stepsPerBeat / 2
    const late = swing > 0 && Math.floor(step / half) % 2 !== 0 ? (swing * (1 - (step % half) / half) * beat) / 6 : 0
    return start + (step / stepsPerBeat) * beat + late + loose * (random() + random() - 1)
  }
  for (let n = 0; n < pickup * 2; n++)
    band.note(habits.lead, 12 + habits.key + pick(random, SCALE), at((n - 2 * pickup) * (stepsPerBeat / 2)), beat / 3, 0.7)

  const bars = Math.ceil((seconds - start) / (beat * beatsPerBar))
  for (let number = 0; number < bars; number++) {
    const part = parts[Math.floor(number / partBars) % parts.length]!
    const within = number % partBars
    const here = number * bar
    const filled = within === partBars - 1 && random() < habits.fills ? 1 : within % 4 === 3 && random() < habits.smallFills ? 0.5 : 0
    if (part.drums) {
      playDrums(band, groove, { here, odd: number % 2, part, filled, at, random })
      if (within === 0 && number > 0 && random() < habits.crashes) band.drum('crash', at(here), 0.9)
    } else if (within === partBars - 1 && random() < 0.5) {
      for (let step = 0; step < bar; step++) band.drum('snare', at(here + step), 0.1 + (0.5 * step) / bar)
    }
    playTones(band, habits, { here, number, within, part, at, beat, beatsPerBar, stepsPerBeat, groove, random })
  }
}

/** A verse and a chorus by turns after some opening, now and then a break. */
function formOf(random: Random): Part[] {
  const opening = pick(random, ['drums', 'pad', 'verse', 'chorus'] as const)
  const body = Array.from({ length: 12 }, (_, n) => (random() < 0.2 ? 'break' : n % 2 === 0 ? 'verse' : 'chorus'))
  return [opening, ...body].map((name) => PARTS[name as keyof typeof PARTS])
}

interface Habits {
  key: number
  roots: number[]
  chorusRoots: number[]
  /** Steps a chord lasts. */
  chordSteps: number
  /** Steps a chord comes early. */
  early: number
  minorKey: boolean
  bass: 'kick' | 'halves' | 'offbeat' | 'long' | 'walk'
  comp: number[] | 'held' | 'broken'
  tune: { step: number; length: number; degree: number }[]
  low: Voice
  chord: Voice
  lead: Voice
  drumless: boolean
  fills: number
  smallFills: number
  crashes: number
}

/** What this band does throughout a song. */
function habitsOf({ beatsPerBar, stepsPerBeat, feel }: Groove, random: Random): Habits {
  const bar = beatsPerBar * stepsPerBeat
  const half = Math.max(1, stepsPerBeat >> 1)
  const progression = pick(random, PROGRESSIONS)
  const everyHalf = Array.from({ length: bar / half }, (_, n) => n * half)
  const held = random() < 0.25
  const comp = pick(random, [
    'held',
    'broken',
    everyHalf,
    everyHalf.filter((step) => step % stepsPerBeat === 0),
    everyHalf.filter((step) => step % stepsPerBeat !== 0),
    everyHalf.filter((step) => step === 0 || random() < 0.4),
  ] as const)
  return {
    key: Math.floor(12 * random()) - 12,
    roots: progression,
    chorusRoots: random() < 0.4 ? pick(random, PROGRESSIONS) : progression,
    chordSteps: bar * pick(random, [1, 1, 1, 1, 1, 2, 2, beatsPerBar === 4 ? 0.5 : 1, 64]),
    early: random() < 0.12 ? half : 0,
    minorKey: random() < 0.3,
    bass: pick(random, ['kick', 'kick', 'halves', 'offbeat', 'long', 'walk'] as const),
    comp: comp === 'held' || comp === 'broken' ? comp : [...comp],
    tune: tuneOf(2 * bar, stepsPerBeat, random),
    low: voiceOf(random, { sustained: random() < 0.5, gain: 0.16 }),
    chord: voiceOf(random, { sustained: held || comp === 'held', gain: 0.05 }),
    lead: voiceOf(random, { sustained: random() < 0.5, gain: 0.08 }),
    drumless: feel === 'soft' && random() < 0.6,
    fills: pick(random, [1, 0.8, 0.4, 0]),
    smallFills: pick(random, [0, 0, 0.5, 1]),
    crashes: pick(random, [1, 0.8, 0.5, 0]),
  }
}

/** A tune of two bars, which begins and rests on strong beats more than elsewhere. */
function tuneOf(steps: number, stepsPerBeat: number, random: Random): Habits['tune'] {
  const tune: Habits['tune'] = []
  let degree = 2 + Math.floor(3 * random())
  const busy = 0.25 + 0.5 * random()
  for (let step = 0; step < steps; step++) {
    const strong = step % (2 * stepsPerBeat) === 0 ? 1.5 : step % stepsPerBeat === 0 ? 1.2 : step % 2 === 0 ? 0.8 : 0.2
    if (random() > busy * strong) continue
    degree = Math.max(0, Math.min(9, degree + Math.floor(5 * random()) - 2))
    tune.push({ step, length: random() < 0.3 * strong ? 1.5 : 0.5, degree })
  }
  return tune
}

interface Bar {
  here: number
  part: Part
  at: (step: number) => number
  random: Random
}

function playDrums(
  band: Band,
  { lines, beatsPerBar, stepsPerBeat, feel }: Groove,
  { here, odd, part, filled, at, random }: Bar & { odd: number; filled: number },
): void {
  const bar = beatsPerBar * stepsPerBeat
  const fillFrom = filled === 0 ? bar : bar - Math.max(1, Math.round(filled * (random() < 0.4 ? 2 : 1) * stepsPerBeat))
  for (const { drum, hits } of lines) {
    for (const [step, force] of hits) {
      const local = step - odd * bar
      if (local < 0 || local >= bar || (local >= fillFrom && drum !== 'kick')) continue
      band.drum(drum, at(here + local), force * part.force * (0.9 + 0.2 * random()) * (feel === 'soft' ? 0.5 : 1))
    }
  }
  for (let step = fillFrom; step < bar; step++)
    if (random() < 0.85) band.drum(pick(random, ['snare', 'tom', 'tom'] as const), at(here + step), 0.5 + 0.3 * random())
}

interface Bars extends Bar {
  number: number
  within: number
  beat: number
  beatsPerBar: number
  stepsPerBeat: number
  groove: Groove
}

function playTones(band: Band, habits: Habits, { here, number, part, at, beat, beatsPerBar, stepsPerBeat, groove, random }: Bars): void {
  const bar = beatsPerBar * stepsPerBeat
  const roots = part.tune ? habits.chorusRoots : habits.roots
  const rootAt = (step: number): number => roots[Math.floor((here + step + habits.early) / habits.chordSteps) % roots.length]!
  const half = Math.max(1, stepsPerBeat >> 1)
  const long = (steps: number) => (steps / stepsPerBeat) * beat
  const toneOf = (root: number, third: number) =>
    root + (third === 0 ? 0 : third === 1 ? (MINOR.includes(root) !== habits.minorKey ? 3 : 4) : 7)

  if (part.bass) {
    for (const step of bassSteps(habits.bass, groove, number, bar, half)) {
      const root = rootAt(step)
      const tone = habits.bass === 'walk' && step > 0 ? toneOf(root, Math.floor(3 * random())) : root + (random() < 0.08 ? 7 : 0)
      band.note(habits.low, habits.key - 24 + tone, at(here + step), long(habits.bass === 'long' ? bar / 2 : half) * 0.9, 0.9)
    }
  }
  if (part.chords) {
    const steps =
      habits.comp === 'held' || !part.drums
        ? [0]
        : habits.comp === 'broken'
          ? Array.from({ length: bar / half }, (_, n) => n * half)
          : habits.comp
    for (const [n, step] of steps.entries()) {
      const begins = step === 0 && habits.early > 0 && number > 0 ? -habits.early : step
      const root = rootAt(begins)
      const tones = habits.comp === 'broken' && part.drums ? [n % 3] : [0, 1, 2]
      const length = steps.length === 1 ? long(bar) * 0.97 : long(half) * 0.9
      for (const third of tones) band.note(habits.chord, habits.key + toneOf(root, third), at(here + begins), length, part.force)
    }
  }
  if (part.tune) {
    for (const { step, length, degree } of habits.tune) {
      const local = step - (number % 2) * bar
      if (local < 0 || local >= bar || (number % 4 === 3 && random() < 0.3)) continue
      band.note(habits.lead, habits.key + 12 + SCALE[degree % 5]! + 12 * Math.floor(degree / 5), at(here + local), length * beat, 0.9)
    }
  }
}

function bassSteps(bass: Habits['bass'], { kick, stepsPerBeat }: Groove, number: number, bar: number, half: number): number[] {
  const every = (step: number, from = 0) => Array.from({ length: Math.ceil((bar - from) / step) }, (_, n) => from + n * step)
  if (bass === 'halves') return every(half)
  if (bass === 'offbeat') return every(stepsPerBeat, half)
  if (bass === 'long') return every(Math.max(stepsPerBeat, bar / 2))
  if (bass === 'walk') return every(stepsPerBeat)
  return kick.map((step) => step - (number % 2) * bar).filter((step) => step >= 0 && step < bar)
}

/** Rounds off what is loud, as a finished recording has it, and brings the loudest to a level. */
function press(samples: Float32Array, level: number): void {
  let loudest = 0
  for (let i = 0; i < samples.length; i++) {
    samples[i] = Math.tanh(1.2 * samples[i]!)
    loudest = Math.max(loudest, Math.abs(samples[i]!))
  }
  for (let i = 0; i < samples.length; i++) samples[i]! *= level / (loudest || 1)
}
