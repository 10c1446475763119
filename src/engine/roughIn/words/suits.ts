import type { Load } from './load.ts'
import { fitsLoad } from './loadWords.ts'
import type { Voice, Where } from './voice.ts'

/** Whether a text is true where it is said: of the load, the music, the place in the class. */
export const suits = (text: string, where: Where, { tells }: Pick<Voice, 'tells'>, loads: readonly Load[] = [where.load]): boolean =>
  fitsLoad(text, loads, tells) && tells.only.every(([words, isThere]) => !words.test(text) || isThere(where))
