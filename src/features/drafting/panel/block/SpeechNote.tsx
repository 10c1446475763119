import type { AppState } from '#store/state.ts'
import { useApp } from '#store/useApp.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'

/** When a cue is said, and how long it takes the one who says it. */
export function SpeechNote({ cueId }: { cueId: string }) {
  const said = useApp((state) => saySpeech(state, cueId))
  return <span className="panel-quiet">{said}</span>
}

function saySpeech({ shownReport }: AppState, cueId: string): string {
  const line = shownReport?.cues.lines.find(({ cue }) => cue.id === cueId)
  if (!line || (line.words === 0 && line.count === undefined)) return ''
  return `${formatNumber(line.to - line.from, 1)} s from ${formatClock(line.from)}`
}
