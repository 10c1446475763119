import { spokenOnBike } from '#engine/anotherBike/spokenOnBike.ts'
import type { CueLine } from '#engine/cues/placeCues.ts'
import type { SectionReport } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { beginOf } from '#engine/timeline/beginOf.ts'
import type { VttCue } from '#formats/webvtt/writeWebVtt.ts'
import type { Ride } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import { secondAt } from '#plan/songs/beatGrid.ts'
import { isolated } from '#units/isolated.ts'
import type { Seconds } from '#units/units.ts'
import { tell, words } from '#words/words.ts'

/** A caption with no words of its own stays for so long. */
const SHORTEST: Seconds = 2

/** What is said, on the ride clock and of the bike the ride is read on: each line from its first word to the change it is about. */
export function rideCaptions(ride: Ride, read: RideReport): VttCue[] {
  const report = read.shownOn ? spokenOnBike(read, ride) : read
  const spoken = report.cues.lines.map((line, index): VttCue => {
    const from = Math.max(0, line.from)
    return {
      id: `${index + 1}`,
      from,
      to: Math.max(from + SHORTEST, line.change, line.to),
      text: captionOf(ride, report, line),
    }
  })
  return [...spoken, ...unspoken(report)]
}

const captionOf = (ride: Ride, report: RideReport, { cue, speaker, block }: CueLine): string => {
  const counts = cue.count ?? 4
  const text = isolated(cue.text.trim()) || words.exports.countsTo({ counts, block: isolated(tell(itemName(report.blocks[block]!.block))) })
  if (ride.leaders.length < 2) return text
  return words.exports.spokenBy({ name: isolated(ride.leaders.find(({ id }) => id === speaker)?.name ?? ''), text })
}

/** Changes nobody has written words for: the call itself, as they come. */
function unspoken({ blocks, cues: { lines } }: RideReport): VttCue[] {
  const told = new Set(lines.map(({ block }) => block))
  return blocks
    .filter(({ index, from, to, ledger }) => to > from && !told.has(index) && ledger.form !== 'stay')
    .map(({ index, from, to, block, ledger }) => ({
      id: `call ${index + 1}`,
      from,
      to: Math.min(to, from + 2 * SHORTEST),
      text: words.exports.callOf({ block: isolated(tell(itemName(block))), call: ledger.call }),
    }))
}

/** The same on the clock of one song's own file: what is said while it plays, its file's start as zero. */
export function songCaptions(ride: Ride, report: RideReport, index: number): VttCue[] {
  const section = report.sections[index]!
  const start = fileStart(ride, section, index)
  const begin = beginOf(section)
  return rideCaptions(ride, report)
    .filter(({ from, to }) => to > begin && from < section.to)
    .map((cue) => ({ ...cue, from: Math.max(begin, cue.from) - start, to: Math.min(section.to, cue.to) - start }))
}

/** Where on the ride clock the song's file would have begun: its in-point is heard as the section begins. */
function fileStart(ride: Ride, section: SectionReport, index: number): Seconds {
  const { song, inCount = 0 } = ride.sections[index]!
  return song?.grid ? beginOf(section) - secondAt(song.grid, inCount) : beginOf(section)
}

/** The sections one after the other, each until the next begins, for players that jump by chapters; the welcome and the wipe-down are chapters too. */
export function chaptersOf(ride: Ride, report: RideReport): VttCue[] {
  const { sections, overall } = report
  const chapters = sections.map(
    (section, index): VttCue => ({
      id: `${index + 1}`,
      from: beginOf(section),
      to: index + 1 < sections.length ? beginOf(sections[index + 1]!) : section.to,
      text: isolated(tell(sectionName(ride, ride.sections[index]!))),
    }),
  )
  const first = sections[0] ? beginOf(sections[0]) : ride.briefingSeconds
  const last = sections.at(-1)?.to ?? first
  return [
    ...(first > 0
      ? [{ id: 'welcome', from: 0, to: first, text: ride.briefingSeconds > 0 ? words.printed.welcomeName : words.exports.leadIn }]
      : []),
    ...chapters.filter(({ from, to }) => to > from),
    ...(overall.total > last ? [{ id: 'wipe-down', from: last, to: overall.total, text: words.printed.wipeDownName }] : []),
  ]
}
