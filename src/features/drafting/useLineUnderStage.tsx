import { lazy, type ReactNode, Suspense, useCallback, useRef, useState } from 'react'
import { useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'
import { useLeftCue } from './cueLine/useLeftCue.ts'
import { LineComing } from './typedLine/LineComing.tsx'

// Fetched when the first line is typed, or the first cue is written.
const TypedLine = lazy(() => import('./typedLine/TypedLine.tsx').then((module) => ({ default: module.TypedLine })))
const CueLine = lazy(() => import('./cueLine/CueLine.tsx').then((module) => ({ default: module.CueLine })))

/** A line for a block that is typed, or for the cues of one. */
type Line = { edited: string | null } | { cuesOf: string; cueId: string | null }

interface LineUnderStage {
  /** Opens it for a new block, or for this one. */
  typeLine: (blockId: string | null) => void
  /** Opens it for the cues of a block, at one of them if told. */
  writeCue: (blockId: string, cueId?: string | null) => void
  /** The line, once it is open. */
  line: ReactNode
}

/**
 * The line under the stage, of which there is one: opening it for something else is closing what was open.
 *
 * @param focus goes to an item on the stage when the line is closed
 * @param show brings an item into sight that the line has made or come to
 */
export function useLineUnderStage(focus: (id: string) => void, show: (id: string) => void): LineUnderStage {
  const store = useAppStore()
  const [opened, setOpened] = useState<{ line: Line; at: number } | null>(null)
  const begun = useRef('')
  const open = useCallback((line: Line) => {
    begun.current = ''
    setOpened({ line, at: performance.now() })
  }, [])
  const close = useCallback(() => {
    setOpened(null)
    const { ids, sectionId } = store.getState().selection
    const last = ids.at(-1) ?? sectionId
    if (last !== null) focus(last)
  }, [store, focus])
  const typeLine = useCallback((blockId: string | null) => open({ edited: blockId }), [open])
  const writeCue = useCallback((blockId: string, cueId: string | null = null) => open({ cuesOf: blockId, cueId }), [open])
  useLeftCue(writeCue)
  if (!opened) return { typeLine, writeCue, line: null }
  const { line, at } = opened
  const isOfCues = 'cuesOf' in line
  return {
    typeLine,
    writeCue,
    line: (
      <Suspense fallback={<LineComing label={isOfCues ? words.cueLine.write : words.typedLine.type} begun={begun} />}>
        {isOfCues ? (
          <CueLine key={at} blockId={line.cuesOf} cueId={line.cueId} begun={begun} onShow={show} onClose={close} />
        ) : (
          <TypedLine key={at} edited={line.edited} begun={begun} onDone={show} onClose={close} />
        )}
      </Suspense>
    ),
  }
}
