import { patchBlock } from '#plan/commands/patchBlock.ts'
import { findBlock } from '#plan/places.ts'
import { effortRange } from '#words/forms.ts'
import { type CurvePart, pulledEffort } from './effortPull.ts'
import type { GestureGround } from './gestureGround.ts'
import { holdPress } from './holdPress.ts'

/** How far over a finger the value stands, so that it can be read, and beside a pointer, in pixels. */
const OVER_FINGER = { x: -20, y: -72 } as const
const BESIDE_POINTER = { x: 16, y: -26 } as const

/** Pulls a block's part of the curve up and down: the ride is shown as it would be, and is it once the pointer lifts, as one step. */
export function pullCurve({ store, content, show }: GestureGround, press: PointerEvent, blockId: string, part: CurvePart): void {
  const { ride, selectItem } = store.getState()
  const effort = ride && findBlock(ride, blockId)?.block.effort
  if (!ride || !effort) return
  const beside = press.pointerType === 'touch' ? OVER_FINGER : BESIDE_POINTER
  let previewed = ''
  holdPress(content, press, {
    moved: ({ clientX, clientY, altKey }) => {
      if (previewed === '') selectItem(blockId)
      content.dataset.grip = part
      const next = pulledEffort(effort, part, press.clientY - clientY, altKey)
      show({ value: { x: clientX + beside.x, y: clientY + beside.y, words: effortRange(next) } })
      const key = `${next.from} ${next.to}`
      if (key === previewed) return
      previewed = key
      store.getState().preview(patchBlock(ride, { blockId, patch: { effort: next } }))
    },
    ended: ({ kept, travelled }) => {
      show(null)
      delete content.dataset.grip
      if (kept) store.getState().commitPreview()
      else if (travelled) store.getState().dropPreview()
    },
  })
}
