import type { PlayedBlock } from '#engine/played.ts'
import { bySpeech } from '#engine/speech/bySpeech.ts'
import type { Speech } from '#engine/speech/speech.ts'
import type { Cue } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import type { CueLine } from './placeCues.ts'

const known = bySpeech(() => new WeakMap<Cue, boolean>())

/** Whether a cue tells riders to drink now; read once for each cue object. */
function isDrink(cue: Cue, speech: Speech): boolean {
  const ofCues = known(speech)
  let told = ofCues.get(cue)
  if (told === undefined) {
    told = speech.told.drink(cue.text)
    ofCues.set(cue, told)
  }
  return told
}

/** When riders are told to drink. A story only tells of it, and a preview of what is to come. */
const drinksTold = (lines: readonly CueLine[], speech: Speech): Seconds[] =>
  lines.filter(({ cue, moment }) => moment !== 'story' && moment !== 'preview' && isDrink(cue, speech)).map(({ from }) => from)

/** When riders drink, in order: in blocks that are marked for it, and where a cue says so. */
export const drinkMoments = (blocks: readonly PlayedBlock[], lines: readonly CueLine[], speech: Speech): Seconds[] =>
  [...blocks.flatMap(({ block, from, to }) => (block.water && to > from ? [from] : [])), ...drinksTold(lines, speech)].sort((a, b) => a - b)

/** What is said of a drink belongs to the one begun less than a minute before. */
const ONE_DRINK: Seconds = 60

/** As `drinkMoments`, each drink once. */
export const drinkStops = (blocks: readonly PlayedBlock[], lines: readonly CueLine[], speech: Speech): Seconds[] =>
  drinkMoments(blocks, lines, speech).filter((at, index, all) => index === 0 || at - all[index - 1]! >= ONE_DRINK)
