import { memo } from 'react'
import type { CueReport } from '#engine/report.ts'
import type { Stretch } from '#units/units.ts'
import { words } from '#words/words.ts'
import { TALK_HEIGHT, talkMarks } from './talkMarks.ts'
import type { TimeScale } from './timeScale.ts'
import './talk.css'

/** What is said, under the blocks it belongs to; what collides stands twice as high and is hatched. */
export const TalkLane = memo(function TalkLane({ cues, scale, stretch }: { cues: CueReport; scale: TimeScale; stretch: Stretch }) {
  return <Marks {...talkMarks(cues, scale, stretch)} />
})

const Marks = memo(function Marks({ said, both, quiet }: ReturnType<typeof talkMarks>) {
  return (
    <svg className="talk" height={TALK_HEIGHT} aria-hidden="true">
      <title>{words.drafting.talk}</title>
      <defs>
        <pattern id="talk-hatch" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line className="talk-hatch" x1="0" x2="0" y1="0" y2="4" />
        </pattern>
      </defs>
      <path className="talk-quiet" d={quiet} />
      <path className="talk-said" d={said} />
      <path className="talk-both" d={both} fill="url(#talk-hatch)" />
    </svg>
  )
})
