import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beatsInSteps } from '#audio/dsp/beatsInSteps.ts'
import type { Heard } from '#audio/dsp/heard.ts'
import type { Weights } from '#audio/dsp/scoreOf.ts'
import { type Choices, choicesOf, hear } from '#tests/bench/corpus/fit/choicesOf.ts'
import { type Choice, type Fitting, fitWeights } from '#tests/bench/corpus/fit/conditionalLogit.ts'
import { composedRenditions, corpusRenditions, FITTED_SEEDS, FRESH_SEEDS, type Rendition } from '#tests/bench/corpus/fit/renditions.ts'
import { type Judged, judge } from '#tests/bench/corpus/judge.ts'
import { headLine, lineOf } from '#tests/bench/corpus/table.ts'
import { finished } from '#tests/support/finished.ts'

type BeatWeights = NonNullable<Parameters<typeof beatsInSteps>[2]>

/** How each choice is fitted: units, ridge and rounds that did best on songs left out. */
const FITTINGS: Record<keyof BeatWeights, Fitting> = {
  pulse: { hidden: 6, ridge: 5, rounds: 300, nets: 3 },
  bar: { hidden: 0, ridge: 20, rounds: 250, nets: 1 },
  eight: { hidden: 0, ridge: 40, rounds: 250, nets: 1 },
}
const FOLDS = 4

/** A song that was listened to: its choices, and what is needed to hear it again by other weights. */
interface Listened {
  id: string
  choices: Choices
  again: { song: Rendition; heard: Heard } | null
}

/**
 * Fits the weights of pulse, bar and eight to a corpus and to composed songs, prints how they do on songs left out, and
 * writes their modules into a folder, or nowhere.
 */
export async function fitBeats(folder: string, out: string | null): Promise<void> {
  const listened: Listened[] = []
  for (const song of corpusRenditions(folder)) listened.push(listenTo(song, song.judged))
  for (const song of composedRenditions(FITTED_SEEDS)) listened.push(listenTo(song, false))

  console.log(headLine())
  const ids = [...new Set(listened.map(({ id }) => id))]
  const foldOf = (id: string) => ids.indexOf(id) % FOLDS
  const left: Judged[] = []
  for (let fold = 0; fold < FOLDS; fold++) {
    const weights = fitted(listened.filter(({ id }) => foldOf(id) !== fold))
    for (const { id, again } of listened) if (again && foldOf(id) === fold) left.push(hearAgain(again, weights))
  }
  console.log(lineOf('songs left out', left, null))
  console.log(
    lineOf(
      '  not synthetic',
      left.filter(({ song }) => song.kind !== 'synth'),
      null,
    ),
  )
  const weights = fitted(listened)
  const judged = listened.flatMap(({ again }) => (again ? [hearAgain(again, weights)] : []))
  console.log(lineOf('songs fitted to', judged, null))
  const fresh = [...composedRenditions(FRESH_SEEDS)].map((song) => hearAgain({ song, heard: hear(song) }, weights))
  console.log(lineOf('fresh composed songs', fresh, null))
  if (out)
    for (const name of Object.keys(FITTINGS) as (keyof BeatWeights)[]) writeWeights(out, name, weights[name], counted(listened, name))
}

function listenTo(song: Rendition, isKept: boolean): Listened {
  const heard = hear(song)
  return {
    id: song.id,
    choices: choicesOf(song, heard),
    again: isKept ? { song: { ...song, samples: song.samples.slice(0, 0) }, heard } : null,
  }
}

function fitted(listened: readonly Listened[]): BeatWeights {
  const weightsOf = (name: keyof BeatWeights): Weights => {
    const choices = listened.map(({ choices }) => choices[name]).filter((choice): choice is Choice => choice !== null)
    return fitWeights(choices, FITTINGS[name])
  }
  return { pulse: weightsOf('pulse'), bar: weightsOf('bar'), eight: weightsOf('eight') }
}

function hearAgain({ song, heard }: NonNullable<Listened['again']>, weights: BeatWeights): Judged {
  const length = heard.curve.length / heard.onsets.rate
  return judge({ ...song, file: '' }, finished(beatsInSteps(heard, { length, opening: 0 }, weights)))
}

const counted = (listened: readonly Listened[], name: keyof BeatWeights): { renditions: number; songs: number } => {
  const used = listened.filter(({ choices }) => choices[name])
  return { renditions: used.length, songs: new Set(used.map(({ id }) => id)).size }
}

function writeWeights(
  out: string,
  name: keyof BeatWeights,
  weights: Weights,
  { renditions, songs }: { renditions: number; songs: number },
): void {
  const text = `import type { Weights } from './scoreOf.ts'

/** By which a song's ${name} is chosen: fitted by \`npm run fit:beats\` to ${renditions} renditions of ${songs} songs. */
export const ${name.toUpperCase()}_WEIGHTS: Weights = ${JSON.stringify(weights)}
`
  writeFileSync(join(out, `${name}Weights.ts`), text)
}
