import { isReadOnly } from '#store/placeSlice.ts'
import { curveGrip } from './curveGrip.ts'
import type { CurvePart } from './effortPull.ts'
import { beginFrame } from './frame.ts'
import { focusStop, type GestureGround } from './gestureGround.ts'
import { holdPress } from './holdPress.ts'
import { pan } from './pan.ts'
import { pullCurve } from './pullCurve.ts'
import type { HeldSpace } from './watchSpace.ts'
import { whatPress } from './whatPress.ts'

/** What answers a press by itself. */
const TAKEN = '[data-stage-stop], .edge, button, a, .rename-field'

/**
 * Hears presses on the stage before cards and songs do, and makes of those that travel what they are: the stage is moved, a
 * frame drawn, or the curve pulled. The others are left alone. A press of the curve selects its block.
 *
 * @returns stops hearing
 */
export function watchPresses(ground: GestureGround, space: HeldSpace): () => void {
  const { store, content, scale } = ground
  const listeners = new AbortController()

  const gripAt = (pressed: Element, { clientX, clientY }: { clientX: number; clientY: number }) => {
    const place = pressed.closest('.chart-place')
    const { shownReport } = store.getState()
    if (!place || !shownReport || pressed.closest('.curve-grip')) return null
    const { left, top } = place.getBoundingClientRect()
    return curveGrip(shownReport.blocks, scale(), { x: clientX - left, y: clientY - top })
  }

  const gestureOf = (event: PointerEvent | MouseEvent) => {
    const pressed = event.target as Element
    const handle = pressed.closest<HTMLElement>('.curve-grip')
    const grip = isReadOnly(store.getState()) ? null : gripAt(pressed, event)
    const gesture = whatPress({
      button: event.button,
      shift: event.shiftKey,
      space: space.isHeld(),
      isMouse: !('pointerType' in event) || event.pointerType === 'mouse',
      handle: (handle?.dataset.part as CurvePart | undefined) ?? null,
      curve: grip?.part ?? null,
      onEdge: pressed.closest('.edge') !== null,
      inBlocks: pressed.closest('.blocks') !== null,
      taken: pressed.closest(TAKEN) !== null,
    })
    return { gesture, handle, grip }
  }

  const down = (event: PointerEvent) => {
    const { gesture, handle, grip } = gestureOf(event)
    if (gesture === 'pan' && (event.button === 1 || space.isHeld())) event.stopPropagation()
    if (gesture === 'pan') pan(ground, event, space.use)
    else if (gesture === 'frame') frame(ground, event)
    else if (gesture === 'curve' && handle?.dataset.blockOf)
      pullCurve(ground, event, handle.dataset.blockOf, handle.dataset.part as CurvePart)
    else if (gesture === 'curve' && grip) pullCurve(ground, event, grip.played.block.id, grip.part)
  }

  // A card under a frame or a held space is not picked up, and the middle button starts nothing of the browser's.
  const mouseDown = (event: MouseEvent) => {
    const { gesture } = gestureOf(event)
    const isOverAll = gesture === 'pan' ? event.button === 1 || space.isHeld() : gesture === 'frame' && event.shiftKey
    if (!isOverAll) return
    event.stopPropagation()
    event.preventDefault()
  }

  const hover = (event: PointerEvent) => {
    if (event.buttons !== 0 || event.pointerType !== 'mouse') return
    const grip = isReadOnly(store.getState()) ? null : gripAt(event.target as Element, event)
    if (grip) content.dataset.grip = grip.part
    else delete content.dataset.grip
  }

  // Whoever reads the chart hears it too; to the stage it is a press of nothing empty.
  const click = (event: MouseEvent) => {
    const pressed = event.target as Element
    if (pressed.closest('.curve-grip')) event.preventDefault()
    const grip = content.dataset.seekable === undefined ? gripAt(pressed, event) : null
    if (!grip) return
    event.preventDefault()
    store.getState().selectItem(grip.played.block.id)
    focusStop(content, grip.played.block.id)
  }

  const { signal } = listeners
  content.addEventListener('pointerdown', down, { signal, capture: true })
  content.addEventListener('mousedown', mouseDown, { signal, capture: true })
  content.addEventListener('pointermove', hover, { signal })
  content.addEventListener('click', click, { signal })
  return () => listeners.abort()
}

function frame(ground: GestureGround, press: PointerEvent): void {
  let drawn: ReturnType<typeof beginFrame> | null = null
  holdPress(ground.content, press, {
    moved: (event) => {
      drawn ??= beginFrame(ground, press, press.ctrlKey || press.metaKey)
      drawn.to(event)
    },
    ended: ({ kept }) => {
      drawn?.end(kept)
      // A press with Shift that stays where it is chooses up to a card, which then has the focus as after any press.
      const stop = (press.target as Element).closest<HTMLElement>('[data-stage-stop]')
      if (!drawn) stop?.focus({ preventScroll: true })
    },
  })
}
