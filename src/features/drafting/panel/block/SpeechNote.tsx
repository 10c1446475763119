import { roomFor } from '#engine/cues/cueRoom.ts'
import type { RideReport } from '#engine/report.ts'
import { useApp } from '#store/useApp.ts'
import type { Seconds } from '#units/units.ts'
import { words } from '#words/words.ts'

/** The seconds a cue needs against those there are, and when it is said, on the ride's clock and the song's. */
export function SpeechNote({ cueId }: { cueId: string }) {
  const report = useApp((state) => state.shownReport)
  const said = report && speechOf(report, cueId)
  if (!said) return null
  return (
    <p className="panel-speech">
      <span data-tight={said.tight || undefined}>{said.budget}</span> <span>{said.when}</span>
    </p>
  )
}

/** Less than this over is a rounding of speech, not a lack of room. */
const SLIGHT: Seconds = 0.25

function speechOf({ cues, blocks, sections }: RideReport, cueId: string) {
  const line = cues.lines.find(({ cue }) => cue.id === cueId)
  if (!line) return null
  const { one } = sections[blocks[line.block]!.section]!
  const needs = line.to - line.from
  const has = roomFor(line, cues.lines, blocks)
  const tight = line.count === undefined && line.change > 0 && needs - has > SLIGHT
  return {
    tight,
    budget:
      line.count === undefined
        ? words.panelsBlock.speechNeeds({ needs, has })
        : words.panelsBlock.speechCounts({ counts: line.count, seconds: needs }),
    when: words.panelsBlock.speechAt({ at: line.from, inSong: line.from - one }),
  }
}
