import type { KeyboardEvent } from 'react'
import { levelToY } from '#features/drafting/stage/chartFrame.ts'
import { type TimeScale, toX } from '#features/drafting/stage/timeScale.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { levelForKey } from '#ui/effortKeys.ts'
import { useMedia } from '#ui/useMedia.ts'
import { words } from '#words/words.ts'
import { type CurvePart, withLevel } from './effortPull.ts'
import { type HandleBox, handleBoxes } from './handleBoxes.ts'

/** As in edge.css. */
const FOR_FINGERS = '(pointer:coarse)'

/** Handles on the selected block's part of the curve: its effort as a whole, and both its ends. By pointer, finger and key. */
export function CurveHandles({ scale }: { scale: TimeScale }) {
  const store = useAppStore()
  const isCoarse = useMedia(FOR_FINGERS)
  const played = useApp(({ shownReport, selection, received }) =>
    selection.ids.length === 1 && received === null ? shownReport?.blocks.find(({ block }) => block.id === selection.ids[0]) : undefined,
  )
  if (!played) return null
  const { id, effort } = played.block
  const press = (event: KeyboardEvent, part: CurvePart) => {
    const { ride, run } = store.getState()
    const level = levelForKey(event, effort[part === 'to' ? 'to' : 'from'])
    if (level === null || !ride) return
    event.preventDefault()
    run(patchBlock(ride, { blockId: id, patch: { effort: withLevel(effort, part, level) } }))
  }
  const boxes = handleBoxes(toX(scale, played.from), toX(scale, played.to), isCoarse)
  const middle = (effort.from + effort.to) / 2
  const levels = { from: effort.from, level: middle, to: effort.to }
  return (['from', 'level', 'to'] as const).map((part) => (
    <div
      key={part}
      role="slider"
      tabIndex={0}
      className="curve-grip"
      data-part={part}
      data-block-of={id}
      aria-label={words.gestures.curve({ part })}
      aria-orientation="vertical"
      aria-valuemin={0}
      aria-valuemax={10}
      aria-valuenow={effort[part === 'to' ? 'to' : 'from']}
      aria-valuetext={words.gestures.curveSays({ part, effort })}
      title={words.gestures.curveTitle({ part })}
      style={placed(boxes[part], levelToY(levels[part]), isCoarse)}
      onKeyDown={(event) => press(event, part)}
    />
  ))
}

/** The box in which it is met, and within it where it is drawn: on the curve, also where the box is kept inside the chart. */
function placed({ left, width, mark }: HandleBox, y: number, isCoarse: boolean) {
  const height = isCoarse ? 44 : 22
  const top = Math.max(0, y - height / 2)
  return { left, top, width, height, '--mark-x': `${mark}px`, '--mark-y': `${y - top}px` } as React.CSSProperties
}
