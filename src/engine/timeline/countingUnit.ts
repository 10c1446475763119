import type { SectionReport } from '#engine/played.ts'
import type { Section } from '#plan/model.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { EIGHT, PHRASE } from '#units/units.ts'

export type CountingUnit = SectionReport['unit']

const EIGHTS: CountingUnit = { eight: EIGHT, phrase: PHRASE, name: 'eight' }
const SIXES: CountingUnit = { eight: 6, phrase: 24, name: 'six' }

/** What a section is counted in: eights and phrases of 32, or in three and six time sixes and phrases of 24. */
export const countingUnit = ({ song }: Section): CountingUnit => (eightOf(song?.grid) === SIXES.eight ? SIXES : EIGHTS)
