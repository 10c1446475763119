import { number, plural } from '#words/forms.ts'

/** Places in a song by its eights or sixes, as they are typed and said. */

const unitName = (unit: number): string => (unit === 6 ? 'six' : 'eight')

interface Line {
  line: string
}

export const songPlaces = {
  songLength: 'A song lasts from 1 second to 6 hours. Write minutes and seconds, such as 3:45.',

  // One place
  start: ({ unit }: { unit: number }) => `Write the number of the ${unitName(unit)}, from 1, such as 9 or 9+4.`,
  end: ({ unit }: { unit: number }) => `Write the number of the last ${unitName(unit)}, such as 76 or 76+4.`,
  afterPlus: ({ unit }: { unit: number }) => `Counts after the plus must be fewer than ${number(unit)}.`,

  // No-talk zones and markers
  notStretch: ({ line }: Line) => `“${line}” isn’t a stretch of the song. Write it like 33–40, 65–72.`,
  endsFirst: ({ line }: Line) => `“${line}” ends before it starts.`,
  notMark: ({ line }: Line) => `“${line}” isn’t a marker. Write one per line, such as 33 chorus.`,

  // Extra and missing beats
  /** Extra beats, or missing ones below 0: "2 extra beats before eight 33". */
  odd: ({ beats, place, unit }: { beats: number; place: string; unit: number }) =>
    `${beats < 0 ? plural(-beats, 'missing beat', 'missing beats') : plural(beats, 'extra beat', 'extra beats')} before ${unitName(unit)} ${place}`,
  tooManyOdd: ({ most }: { most: number }) => `A song can have extra or missing beats at ${number(most)} places at most.`,
  notOdd: ({ line, unit }: Line & { unit: number }) =>
    `“${line}” can’t be read. Write one place per line, the ${unitName(unit)} and the beats: 33 +2 or 65 −1.`,
  partOfBeat: ({ line }: Line) => `“${line}” has part of a beat; extra and missing beats are whole.`,
  noBeat: ({ line }: Line) => `“${line}” adds and drops no beat. Remove the line.`,
  tooManyBeats: ({ line, most }: Line & { most: number }) =>
    `“${line}” has too many: at most ${number(most)} beats can be extra or missing in one place.`,
  beyondSong: ({ line }: Line) => `“${line}” is beyond any song.`,
  twoLines: ({ place, unit }: { place: string; unit: number }) =>
    `There are two lines for ${unitName(unit)} ${place}. Write all its beats in one.`,
  beforeFirst: ({ place, unit }: { place: string; unit: number }) =>
    `Nothing is counted before ${unitName(unit)} ${place}, so no beat can be extra or missing there. Set the first beat instead.`,
  /** More beats are missing than there is room for since the place before, or since the first beat. */
  noRoom: ({
    place,
    missing,
    room,
    since,
    unit,
  }: {
    place: string
    missing: number
    room: number
    since?: string | undefined
    unit: number
  }) => {
    const most = room < 1 ? 'none can be missing' : `at most ${number(room)} can be missing`
    const from = since === undefined ? 'from the first beat on' : `after ${unitName(unit)} ${since}`
    const counts = `${plural(room + 1, 'count', 'counts')} ${room === 0 ? 'comes' : 'come'} before it ${from}`
    return `Before ${unitName(unit)} ${place} ${most}, not ${number(missing)}: only ${counts}.`
  },
}
