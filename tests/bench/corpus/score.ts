import MusicTempo from 'music-tempo'
import { analyseBeats } from '#audio/dsp/analyseBeats.ts'
import { type KnownSong, knownSongs, type LoadedSong, loadSong } from '#tests/bench/corpus/corpus.ts'
import { fMeasure } from '#tests/bench/corpus/fMeasure.ts'

/** What one tool says of one song; what it does not say is null. */
interface Said {
  bpm: number
  beats: number[] | null
  downbeats: number[] | null
  beatsPerBar: number | null
}

interface Judged {
  song: KnownSong
  seconds: number
  took: number
  bpm: number
  beatF: number | null
  downbeatF: number | null
  beatsPerBar: number | null
  /** Milliseconds the fitted tempo is off after four minutes, octave apart. */
  drift: number
}

type Tool = (song: LoadedSong) => Said | null

const TOOLS: Record<string, Tool> = {
  'this analysis': ({ samples, sampleRate }) => analyseBeats(samples, sampleRate),
  'music-tempo': ({ samples }) => {
    try {
      const { tempo, beats } = new MusicTempo(samples)
      return { bpm: Number(tempo), beats, downbeats: null, beatsPerBar: null }
    } catch {
      // It throws where it finds no tempo, which is an answer.
      return null
    }
  },
}

const OCTAVES = [1, 2, 1 / 2, 3, 1 / 3]

/** Scores every tool on every song of a corpus, uncut and cut, and prints a table for each. */
export function scoreCorpus(folder: string, { libraries, each }: { libraries: boolean; each: boolean }): void {
  const songs = knownSongs(folder)
  const tools = Object.entries(TOOLS).slice(0, libraries ? undefined : 1)
  for (const cut of [false, true]) {
    const judged = tools.map(([name]) => ({ name, rows: [] as Judged[] }))
    for (const known of songs) {
      const song = loadSong(folder, known, cut)
      for (const [i, [, tool]] of tools.entries()) judged[i]!.rows.push(judge(song, tool))
    }
    console.log(`\n${songs.length} songs, ${cut ? 'three to seventeen seconds cut off the front' : 'whole'}`)
    console.log('                 tempo 4 %  1 %  any octave  beat F  one F 4/4  one F all  bar named  drift 50 % / 90 % ms  × real time')
    for (const { name, rows } of judged) console.log(lineOf(name, rows))
    if (each) for (const row of judged[0]!.rows) console.log(songLine(row))
  }
}

function judge(song: LoadedSong, tool: Tool): Judged {
  const start = performance.now()
  const said = tool(song)
  const took = (performance.now() - start) / 1000
  const bpm = said?.bpm ?? 0
  const off = Math.min(...OCTAVES.map((octave) => Math.abs(bpm / (song.bpm * octave) - 1)))
  return {
    song,
    seconds: song.samples.length / song.sampleRate,
    took,
    bpm,
    beatF: fMeasure(said?.beats ?? [], song.beats),
    downbeatF: said?.downbeats && song.downbeats ? fMeasure(said.downbeats, song.downbeats) : null,
    beatsPerBar: said?.beatsPerBar ?? null,
    drift: off * 240_000,
  }
}

function lineOf(name: string, rows: readonly Judged[]): string {
  const near =
    (within: number) =>
    ({ bpm, song }: Judged) =>
      Math.abs(bpm / song.bpm - 1) <= within
  const anyOctave = ({ bpm, song }: Judged) => OCTAVES.some((octave) => Math.abs(bpm / (song.bpm * octave) - 1) <= 0.04)
  const drifts = rows
    .filter(anyOctave)
    .map(({ drift }) => drift)
    .sort((a, b) => a - b)
  const inFour = rows.filter(({ song }) => song.meter === '4/4')
  const named = rows.filter(({ song, beatsPerBar }) => beatsPerBar !== null && beatsPerBar === Number(song.meter[0]))
  const figures = [
    share(rows, near(0.04)).padStart(9),
    share(rows, near(0.01)).padStart(4),
    share(rows, anyOctave).padStart(11),
    mean(rows.map(({ beatF }) => beatF)).padStart(7),
    mean(inFour.map(({ downbeatF }) => downbeatF)).padStart(10),
    mean(rows.map(({ downbeatF }) => downbeatF)).padStart(10),
    (rows[0]?.beatsPerBar === null ? '–' : `${named.length}/${rows.length}`).padStart(10),
    `${drifts[drifts.length >> 1]?.toFixed(1)} / ${drifts[Math.floor(drifts.length * 0.9)]?.toFixed(1)}`.padStart(21),
    (sum(rows.map(({ seconds }) => seconds)) / sum(rows.map(({ took }) => took))).toFixed(0).padStart(12),
  ]
  return `${name.padEnd(17)}${figures.join(' ')}`
}

function songLine({ song, bpm, beatF, downbeatF, beatsPerBar }: Judged): string {
  const figures = `${song.bpm.toFixed(2).padStart(7)} heard ${bpm.toFixed(2).padStart(7)}  beat F ${percent(beatF)}  one F ${percent(downbeatF)}`
  return `  ${song.id.padEnd(26)} ${song.meter} ${figures}  ${beatsPerBar ?? '–'} a bar`
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
const percent = (value: number | null): string => (value === null ? '–' : (100 * value).toFixed(0)).padStart(3)
const share = (rows: readonly Judged[], holds: (row: Judged) => boolean): string =>
  ((100 * rows.filter(holds).length) / rows.length).toFixed(0)
function mean(values: readonly (number | null)[]): string {
  const said = values.filter((value) => value !== null)
  return said.length === 0 ? '–' : ((100 * sum(said)) / said.length).toFixed(1)
}
