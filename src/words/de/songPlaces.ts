import type { en } from '#words/en/index.ts'
import { plural } from '#words/forms.ts'

const unitName = (unit: number): string => (unit === 6 ? 'Sechser' : 'Achter')

export const songPlaces: typeof en.songPlaces = {
  odd: ({ beats, place, unit }) =>
    `${beats < 0 ? plural(-beats, 'fehlender Beat', 'fehlende Beats') : plural(beats, 'zusätzlicher Beat', 'zusätzliche Beats')} vor ${unitName(unit)} ${place}`,
}
