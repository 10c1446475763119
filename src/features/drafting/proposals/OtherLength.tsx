import { useEffect, useState } from 'react'
import { makeVariant, VARIANT_MINUTES, type Variant } from '#engine/fit/makeVariant.ts'
import { whatStays } from '#engine/fit/whatStays.ts'
import { Proposal } from '#features/drafting/proposals/Proposal.tsx'
import { useHeldPreview } from '#features/drafting/useHeldPreview.ts'
import type { Command } from '#plan/commands/command.ts'
import type { Ride } from '#plan/model.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Segmented } from '#ui/Segmented.tsx'
import { say, type Text } from '#words/said.ts'
import { tell, words } from '#words/words.ts'

/**
 * A shorter or longer version of the class: what stays, what changes, seen on the stage before it
 * becomes a ride of its own that knows what it was made from.
 */
export function OtherLength({ onClose }: { onClose: () => void }) {
  const store = useAppStore()
  const ride = useApp((state) => state.ride)
  const kept = useApp((state) => state.saved !== 'failed')
  const [minutes, setMinutes] = useState<number>()
  const chosen = minutes ?? usualLength(ride?.slotMinutes ?? 0)
  const found = useVariant(ride, chosen)
  useHeldPreview(found?.shows ?? null)
  if (!ride) return null

  const open = () => {
    const made = found?.variant.ride
    if (!made) return
    const parent = ride.title
    store.getState().openRide(made)
    store.getState().announce(words.fit.madeFrom({ title: made.title, parent }))
    onClose()
  }
  const { variant, stays } = found ?? {}
  return (
    <Proposal
      title={words.fit.lengthTitle}
      where={words.fit.lengthWhere({ title: ride.title, minutes: ride.slotMinutes })}
      onClose={onClose}
      actions={
        variant?.ride && (
          <Button tone="solid" disabled={!kept} onClick={open}>
            {words.fit.saveAsRide}
          </Button>
        )
      }
    >
      <Segmented
        label={words.fit.minutes}
        value={String(chosen)}
        choices={VARIANT_MINUTES.map((length) => ({
          value: String(length),
          label: String(length),
          disabled: length === ride.slotMinutes,
        }))}
        onChange={(length) => setMinutes(Number(length))}
      />
      {!variant && <p className="panel-quiet">{words.fit.working}</p>}
      {variant && !variant.ok && <p>{tell(variant.reason)}</p>}
      {stays && (
        <>
          <h3>{words.fit.whatStays}</h3>
          <ul className="proposal-list">
            {stays.map(tell).map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </>
      )}
      {variant?.changes && (
        <>
          <h3>{words.fit.whatChanges}</h3>
          <ul className="proposal-list">
            {variant.changes
              .map(({ sectionId, text }) => ({ sectionId, text: tell(text) }))
              .map(({ sectionId, text }) => (
                <li key={`${sectionId} ${text}`}>{text}</li>
              ))}
          </ul>
        </>
      )}
      {!kept && <p className="panel-note">{words.fit.cannotKeep}</p>}
    </Proposal>
  )
}

/** What most classes are booked for. */
const USUAL: readonly number[] = [20, 30, 45, 60]

/** The next shorter of the usual lengths, else the next longer. */
const usualLength = (slot: number): number => USUAL.findLast((length) => length < slot) ?? USUAL.find((length) => length > slot) ?? slot

interface Found {
  variant: Variant
  stays?: Text[]
  shows: Command | null
}

/** Works a version out once the page has drawn that it is being worked out: a long one takes a second. */
function useVariant(ride: Ride | null, minutes: number): Found | null {
  const store = useAppStore()
  const [id] = useState(() => store.getState().newId())
  const [found, setFound] = useState<(Found & { of: Ride; minutes: number }) | null>(null)
  useEffect(() => {
    if (!ride) return
    const timer = setTimeout(() => {
      const variant = makeVariant(ride, minutes, id)
      const made = variant.ride
      const shows = made ? { label: say('fit.versionOf', { minutes }), apply: () => made } : null
      setFound({ of: ride, minutes, variant, shows, ...(made && { stays: whatStays(ride, made) }) })
    }, 30)
    return () => clearTimeout(timer)
  }, [ride, minutes, id])
  return found?.of === ride && found?.minutes === minutes ? found : null
}
