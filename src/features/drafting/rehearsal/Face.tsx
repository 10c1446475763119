import { useEffect, useMemo, useRef, useState } from 'react'
import type { Plan } from '#engine/leading/led.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import type { Rehearsal } from './rehearsal.ts'
import { rehearsalView, type Slot } from './rehearsalView.ts'
import { createSlots } from './slots.ts'

/** A class that goes as planned. */
const AS_PLANNED = { slotFrom: 0, startedAt: 0, events: [] }

interface FaceProps {
  rehearsal: Rehearsal
  /** Told the block that is ridden whenever it is another one; null between blocks. */
  onBlock: (blockId: string | null) => void
}

/**
 * What is ridden, said and counted at the moment that is heard. Its words are written frame by frame
 * from the clock of the sound card, past React.
 */
export function Face({ rehearsal, onBlock }: FaceProps) {
  const store = useAppStore()
  const ride = useApp((state) => state.shown)
  const report = useApp((state) => state.shownReport)
  const led = useMemo(() => (ride && report ? ledClass({ ride, report } satisfies Plan, AS_PLANNED) : null), [ride, report])
  const root = useRef<HTMLDivElement>(null)
  const [write, setWrite] = useState<ReturnType<typeof createSlots<Slot>> | null>(null)
  useEffect(() => {
    if (root.current) {
      const made = createSlots<Slot>(root.current)
      setWrite(() => made)
    }
  }, [])
  const place = useRef('')
  const tellBlock = useRef(onBlock)
  tellBlock.current = onBlock

  useEffect(() => {
    if (!led || !write) return
    return rehearsal.frames.subscribe((timestamp) => {
      const state = stateOf(led, rehearsal.timeAt(timestamp))
      const { texts, spoken } = rehearsalView(led, state)
      write(texts)
      if (root.current) root.current.dataset.beat = `${state.beat?.count ?? 0}`
      const key = `${state.phase} ${state.section} ${state.block}`
      if (key === place.current) return
      place.current = key
      tellBlock.current(state.block === undefined ? null : led.report.blocks[state.block]!.block.id)
      if (rehearsal.snapshot().phase === 'playing') store.getState().announce(spoken)
    })
  }, [led, write, rehearsal, store])

  return (
    <div ref={root} className="rehearsal-face">
      <p className="rehearsal-count" aria-hidden="true">
        <b data-slot="count" /> <span data-slot="eight" />
      </p>
      <div className="rehearsal-words">
        <p>
          <b data-slot="name" /> <span data-slot="call" />
        </p>
        <p className="rehearsal-say" data-slot="say" />
        <p className="rehearsal-next" data-slot="next" />
      </div>
      <p className="rehearsal-clock">
        <span data-slot="clock" /> <span className="rehearsal-song" data-slot="song" />
      </p>
    </div>
  )
}
