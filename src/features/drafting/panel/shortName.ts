import { riderName } from '#plan/names.ts'
import type { Rider } from '#plan/riderModel.ts'
import { tell } from '#words/words.ts'

/** Without what all riders are called in English: "regular rider" → "regular". */
export const shortName = (rider: Pick<Rider, 'id' | 'name'>): string => tell(riderName(rider)).replace(/ rider$/, '')
