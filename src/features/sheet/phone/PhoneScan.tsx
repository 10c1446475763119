import { type KeyboardEvent, useEffect, useRef, useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { PHONE_SCREENS } from '#features/sheet/actions/sheetPlaces.ts'
import { SHOW_ON_SCREEN } from '#features/sheet/actions/showOnScreen.ts'
import { PHONE } from '#features/sheet/paging/paper.ts'
import { SheetPages } from '#features/sheet/view/SheetPages.tsx'
import type { SheetParts } from '#features/sheet/view/sheetParts.ts'
import type { LaidSheet } from '#features/sheet/view/useSheetPlan.ts'
import { useAppStore } from '#store/useApp.ts'
import { useWakeLock } from '#ui/useWakeLock.ts'
import { words } from '#words/words.ts'
import { turnOf } from './scanKeys.ts'
import './phone.css'

/** The screens one at a time over the whole display: a tap, a key or a page-turner goes on, nothing scrolls or swipes. */
export function PhoneScan({ plan, parts }: { plan: LaidSheet; parts: SheetParts }) {
  const [open, setOpen] = useState(false)
  const on = { store: useAppStore(), open: () => setOpen(true) }
  usePlaceActions(PHONE_SCREENS, () => on)
  return (
    <div className="sheet-scan-start">
      <ActionButton action={SHOW_ON_SCREEN} on={on} tone="action" />
      {open && <Scan plan={plan} parts={parts} onClose={() => setOpen(false)} />}
    </div>
  )
}

function Scan({ plan, parts, onClose }: { plan: LaidSheet; parts: SheetParts; onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null)
  const [screen, setScreen] = useState(0)
  const scale = useScreenScale()
  useWakeLock()
  const last = plan.pages.length - 1
  const turn = (by: number) => setScreen((now) => Math.min(last, Math.max(0, now + by)))
  const onKeyDown = (event: KeyboardEvent) => {
    const by = turnOf(event.key)
    if (by === null) return
    event.preventDefault()
    turn(by)
  }
  useEffect(() => dialog.current?.showModal(), [])
  return (
    <dialog
      ref={dialog}
      className="sheet-scan"
      aria-label={words.sheet.screensShown}
      onCancel={onClose}
      onClose={onClose}
      onKeyDown={onKeyDown}
    >
      <div className="sheet-scan-screen" style={{ transform: `scale(${scale})` }}>
        <SheetPages parts={parts} plan={plan} paper="a4" only={screen} />
      </div>
      <button type="button" className="sheet-scan-back" aria-label={words.sheet.back} onClick={() => turn(-1)} />
      <button type="button" className="sheet-scan-on" aria-label={words.sheet.on} onClick={() => turn(1)} />
      <p className="sheet-scan-foot">
        <span role="status">{words.sheet.placeOf({ place: screen + 1, of: last + 1 })}</span>
        <button type="button" onClick={onClose}>
          {words.sheet.close}
        </button>
      </p>
    </dialog>
  )
}

/** Room under the screen for its number and the way out, in CSS pixels. */
const FOOT = 40

const screenScale = (): number => Math.min(window.innerWidth / PHONE.width, (window.innerHeight - FOOT) / PHONE.height)

/** How much a screen grows to fill this display. */
function useScreenScale(): number {
  const [scale, setScale] = useState(screenScale)
  useEffect(() => {
    const update = () => setScale(screenScale())
    window.addEventListener('resize', update)
    return () => window.removeEventListener('resize', update)
  }, [])
  return scale
}
