import { isAnyOctave, isNear, type Judged } from '#tests/bench/corpus/judge.ts'

/** What a tool took for how much music; seconds. */
export interface Pace {
  took: number
  music: number
}

const HEAD = [
  'tempo 4 %',
  '1 %',
  'any octave',
  'tempo off %',
  'beat F',
  'one F 4/4',
  'one F all',
  'eight F',
  'bar named',
  'drift 50 / 90 % ms',
  '× real time',
]

export const headLine = (): string => ' '.repeat(NAME) + HEAD.join('  ')

const NAME = 24

/** One line of the table: how right a tool was over all songs, and its pace. */
export function lineOf(name: string, rows: readonly Judged[], pace: Pace | null): string {
  const drifts = rows.filter(isAnyOctave).map(({ drift }) => drift)
  const named = rows.filter(({ song, beatsPerBar }) => beatsPerBar === Number(song.meter[0]))
  const inFour = rows.filter(({ song }) => song.meter === '4/4')
  const saysBeats = rows.some(({ beatF }) => beatF > 0)
  const figures = [
    share(rows, (row) => isNear(row, 0.04)),
    share(rows, (row) => isNear(row, 0.01)),
    share(rows, isAnyOctave),
    (quantile(drifts, 0.5) / 2400).toFixed(4),
    saysBeats ? mean(rows.map(({ beatF }) => beatF)) : '–',
    mean(inFour.map(({ downbeatF }) => downbeatF)),
    mean(rows.map(({ downbeatF }) => downbeatF)),
    mean(rows.map(({ eightF }) => eightF)),
    rows.every(({ beatsPerBar }) => beatsPerBar === null) ? '–' : `${named.length}/${rows.length}`,
    `${quantile(drifts, 0.5).toFixed(1)} / ${quantile(drifts, 0.9).toFixed(1)}`,
    pace ? (pace.music / pace.took).toFixed(0) : '–',
  ]
  return name.padEnd(NAME) + figures.map((figure, i) => figure.padStart(HEAD[i]!.length)).join('  ')
}

/** One line for one song. */
export function songLine({ song, bpm, beatF, downbeatF, eightF, beatsPerBar }: Judged): string {
  const shares = `beat F ${percent(beatF)}  one F ${percent(downbeatF)}  eight F ${percent(eightF)}`
  return `  ${song.id.padEnd(26)} ${song.meter} ${song.bpm.toFixed(2).padStart(7)} heard ${bpm.toFixed(2).padStart(7)}  ${shares}  ${beatsPerBar ?? '–'} a bar`
}

const percent = (value: number | null): string => (value === null ? '–' : (100 * value).toFixed(0)).padStart(3)

function share(rows: readonly Judged[], holds: (row: Judged) => boolean): string {
  return ((100 * rows.filter(holds).length) / rows.length).toFixed(0)
}

function mean(values: readonly (number | null)[]): string {
  const said = values.filter((value) => value !== null)
  return said.length === 0 ? '–' : ((100 * said.reduce((sum, value) => sum + value, 0)) / said.length).toFixed(1)
}

function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN
}
