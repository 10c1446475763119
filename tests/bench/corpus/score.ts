import MusicTempo from 'music-tempo'
import { openHearingPage } from '#tests/bench/corpus/browserTools.ts'
import { cutOf, cutSong, knownSongs, type LoadedSong, loadSong } from '#tests/bench/corpus/corpus.ts'
import { type Judged, judge, type Said, type Tool } from '#tests/bench/corpus/judge.ts'
import { headLine, lineOf, type Pace, songLine } from '#tests/bench/corpus/table.ts'
import { analyseBeats } from '#tests/support/analyseBeats.ts'

/** Times a tool of Node by the processor's clock, which other work on the machine does not touch. */
const inNode =
  (hear: (song: LoadedSong) => Said | null): Tool =>
  async (song) => {
    const start = process.cpuUsage()
    const said = hear(song)
    const { user, system } = process.cpuUsage(start)
    return { said, took: (user + system) / 1e6 }
  }

const ANALYSIS = inNode(({ samples, sampleRate }) => analyseBeats(samples, sampleRate))

const MUSIC_TEMPO = inNode(({ samples }) => {
  try {
    const { tempo, beats } = new MusicTempo(samples)
    return { bpm: Number(tempo), beats, downbeats: null, eights: null, beatsPerBar: null }
  } catch {
    // It throws where it finds no tempo, which is an answer.
    return null
  }
})

/** Scores every tool on every song of a corpus, uncut and cut, and prints a table for each. */
export async function scoreCorpus(folder: string, { libraries, each }: { libraries: boolean; each: boolean }): Promise<void> {
  const songs = knownSongs(folder)
  const page = libraries ? await openHearingPage(folder) : null
  const tools: [string, Tool][] = [['this analysis', ANALYSIS]]
  if (page) tools.push(['music-tempo', MUSIC_TEMPO], ...Object.entries(page.tools))
  try {
    for (const isCut of [false, true]) {
      const judged = tools.map(([name]) => ({ name, rows: [] as Judged[], pace: { took: 0, music: 0 } as Pace }))
      for (const known of songs) {
        const cut = isCut ? cutOf(known.id) : 0
        const song = cutSong(loadSong(folder, known), cut)
        for (const [i, [, tool]] of tools.entries()) {
          const { said, took } = await tool(song, cut)
          judged[i]!.rows.push(judge(song, said))
          judged[i]!.pace.took += took
          judged[i]!.pace.music += song.samples.length / song.sampleRate
        }
      }
      console.log(`\n${songs.length} songs, ${isCut ? 'three to seventeen seconds cut off the front' : 'whole'}`)
      console.log(headLine())
      for (const { name, rows, pace } of judged) console.log(lineOf(name, rows, pace))
      if (each) for (const row of judged[0]!.rows) console.log(songLine(row))
    }
  } finally {
    await page?.close()
  }
}
