import { plural } from '#words/forms.ts'

/** Places in a song by its eights or sixes, as they are typed and said. */

const unitName = (unit: number): string => (unit === 6 ? 'six' : 'eight')

export const songPlaces = {
  /** Extra beats, or missing ones below 0: "2 extra beats before eight 33". */
  odd: ({ beats, place, unit }: { beats: number; place: string; unit: number }) =>
    `${beats < 0 ? plural(-beats, 'missing beat', 'missing beats') : plural(beats, 'extra beat', 'extra beats')} before ${unitName(unit)} ${place}`,
}
