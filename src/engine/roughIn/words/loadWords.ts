import type { Load } from './load.ts'
import type { LoadWords, Voice } from './voice.ts'

/** How far the model may be from a word's band. */
const MODEL_SLACK = 0.5

/**
 * Whether a text's words about load fit what is ridden: each of them at least one of the loads it may be about.
 *
 * @param loads of the block that is called; of a song that is previewed all its blocks
 */
export function fitsLoad(text: string, loads: readonly Load[], tells: Pick<Voice['tells'], 'loads' | 'body'>): boolean {
  const told = text.replace(tells.body, ' ')
  return tells.loads.every((one) => !one.words.test(told) || loads.some((load) => isWithin(one, load)))
}

function isWithin({ least, most, weighted, knob }: LoadWords, load: Load): boolean {
  if (knob !== undefined && load.knob !== knob) return false
  if (load.to < least || load.to > most) return false
  return !weighted || (load.weighted && (load.demand === null || load.demand >= least - MODEL_SLACK))
}
