import { useEffect } from 'react'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Bar } from '#ui/Bar.tsx'
import { Button } from '#ui/Button.tsx'

/** Says that the ride shown came from elsewhere, and offers the two ways on. Draws nothing while the ride is one's own. */
export function ReceivedBar() {
  const store = useAppStore()
  const received = useApp((state) => state.received)
  const ownRide = useApp((state) => state.ownRide)
  const place = useApp((state) => state.place)
  const setPlace = useApp((state) => state.setPlace)
  const hasOwn = useApp((state) => state.ride !== null)
  const keepCopy = useApp((state) => state.keepCopy)
  const dismiss = useApp((state) => state.dismissReceived)
  const announce = useApp((state) => state.announce)
  useEffect(() => {
    if (received) void store.getState().findOwnRide()
  }, [store, received])
  if (received === null || place === 'merge') return null
  const { title } = received.ride

  const keep = () => {
    keepCopy()
    if (place === 'start') setPlace('draft')
    announce(`“${title || 'untitled ride'}” is now a ride of your own.`)
  }
  return (
    <Bar
      label="shared ride"
      actions={
        <>
          {ownRide && (
            <Button tone="solid" onClick={() => void store.getState().startMerge()}>
              see what changed
            </Button>
          )}
          <Button tone={ownRide ? 'plain' : 'solid'} onClick={keep}>
            keep a copy
          </Button>
          {place === 'start' && <Button onClick={() => setPlace('draft')}>show it</Button>}
          <Button onClick={dismiss}>{hasOwn ? 'close, back to my ride' : 'close'}</Button>
        </>
      }
    >
      <strong>Shared ride “{title || 'untitled ride'}”, read-only.</strong> Look around: nothing of it can be changed and nothing of yours
      is touched.{ownRide && ` It belongs to “${ownRide.title || 'untitled ride'}” of yours.`}
    </Bar>
  )
}
