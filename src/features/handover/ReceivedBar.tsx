import { useEffect } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Bar } from '#ui/Bar.tsx'
import { words } from '#words/words.ts'
import { CLOSE_RECEIVED, KEEP_COPY, RECEIVED, SEE_CHANGES, SHOW_RECEIVED } from './actions/received.ts'

/** Says that the ride shown came from elsewhere, and offers the two ways on. Draws nothing while the ride is one's own. */
export function ReceivedBar() {
  const store = useAppStore()
  const received = useApp((state) => state.received)
  const ownRide = useApp((state) => state.ownRide)
  const place = useApp((state) => state.place)
  const on = { store }
  usePlaceActions(RECEIVED, () => on)
  useEffect(() => {
    if (received) void store.getState().findOwnRide()
  }, [store, received])
  if (received === null || place === 'merge') return null
  const { title } = received.ride
  return (
    <Bar
      label={words.handover.shared}
      actions={
        <>
          <ActionButton action={SEE_CHANGES} on={on} tone="solid" />
          <ActionButton action={KEEP_COPY} on={on} tone={ownRide ? 'plain' : 'solid'} />
          <ActionButton action={SHOW_RECEIVED} on={on} />
          <ActionButton action={CLOSE_RECEIVED} on={on} />
        </>
      }
    >
      <strong>{words.handover.sharedRide({ title: title || words.names.untitled })}</strong> {words.handover.lookAround}
      {ownRide && ` ${words.handover.belongsTo({ title: ownRide.title || words.names.untitled })}`}
    </Bar>
  )
}
