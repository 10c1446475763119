import { type KeyboardEvent, useLayoutEffect, useRef } from 'react'
import { runAndSay } from '#features/drafting/draftActions.ts'
import { useStage } from '#features/drafting/stage/StageContext.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Field } from '#ui/Field.tsx'
import { DROPS_TEXT, TAKES_TEXT } from '#ui/fieldKeys.ts'
import { words } from '#words/words.ts'
import { namingOf } from './naming.ts'
import './renameField.css'

interface RenameFieldProps {
  id: string
  /** What it was asked for on; null where any stop of the same id will do. */
  stop: HTMLElement | null
  /** Told whether the focus is to go back to the stage. */
  onClose: (goesBack: boolean) => void
}

/** A name of the stage as a field, over where it stands. Enter keeps it, and so does leaving it; Escape gives it up. */
export function RenameField({ id, stop, onClose }: RenameFieldProps) {
  const store = useAppStore()
  const { lane, scroller, scale } = useStage()
  const ride = useApp((state) => state.ride)
  const naming = ride && namingOf(ride, id)
  const root = useRef<HTMLDivElement>(null)
  const isRefused = useRef(false)

  // Over its name, where that is in sight, else at the side of the stage.
  useLayoutEffect(() => {
    const [box, content, sight] = [root.current, lane.current, scroller.current]
    const named = stop?.isConnected ? stop : content?.querySelector(`[data-stage-stop][data-id="${CSS.escape(id)}"]`)
    if (!box || !content || !sight || !named) return
    const [from, to] = [content.getBoundingClientRect(), named.getBoundingClientRect()]
    const width = Math.min(Math.max(to.width, WIDTH.least), WIDTH.most, sight.clientWidth - 2 * GAP)
    const last = sight.scrollLeft + sight.clientWidth - width - GAP
    box.style.width = `${width}px`
    box.style.left = `${Math.max(sight.scrollLeft, Math.min(to.left - from.left, last))}px`
    box.style.top = `${to.top - from.top}px`
    // Where it stands follows the zoom.
    void scale
  }, [stop, id, lane, scroller, scale])

  useLayoutEffect(() => {
    const field = root.current?.querySelector('input')
    field?.focus({ preventScroll: true })
    field?.select()
    root.current?.scrollIntoView({ block: 'nearest', inline: 'nearest' })
  }, [])

  if (!naming) return null
  const take = (typed: string) => {
    const text = typed.trim()
    const { ride: now } = store.getState()
    const problem =
      text === '' && naming.required !== undefined
        ? naming.required
        : text.length > naming.longest
          ? words.fields.tooLong({ most: naming.longest, length: text.length })
          : null
    isRefused.current = problem !== null
    if (problem === null && now && text !== naming.value.trim()) runAndSay(store, naming.command(now, text), id)
    return problem
  }
  const key = (event: KeyboardEvent) => {
    isRefused.current = false
    if (event.key !== DROPS_TEXT || event.nativeEvent.isComposing) return
    event.stopPropagation()
    onClose(true)
  }
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the field in it is what has the focus
    <div
      ref={root}
      className="rename-field"
      onKeyDown={(event) => {
        if (event.key === TAKES_TEXT && !event.nativeEvent.isComposing && !isRefused.current) onClose(true)
      }}
      onBlur={() => {
        if (!isRefused.current) onClose(false)
      }}
    >
      <Field
        label={words.renaming.label({ name: naming.name })}
        hideLabel
        value={naming.value}
        placeholder={naming.placeholder}
        onCommit={take}
        onKeyDown={key}
      />
    </div>
  )
}

/** How wide the field is at least and at most, whatever the block, and how far from the stage's side it keeps, in pixels. */
const WIDTH = { least: 190, most: 340 } as const
const GAP = 4
