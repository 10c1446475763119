import type { MouseEvent } from 'react'
import { Button } from '#ui/Button.tsx'
import { changedWords } from './changedWords.ts'

/** What the list shows of a ride saved on this machine. */
export interface SavedRide {
  id: string
  title: string
  level: string
  slotMinutes: number
  /** Milliseconds since 1970. */
  changedAt: number
}

interface Props {
  rides: readonly SavedRide[]
  /** Milliseconds since 1970. */
  now: number
  /** The page address that opens a saved ride, for links that can be kept or opened in another tab. */
  addressOf: (id: string) => string
  onOpen: (id: string) => void
  onDuplicate: (id: string) => void
  onDelete: (id: string) => void
}

/** The rides kept on this machine, last changed first. */
export function SavedRides({ rides, now, addressOf, onOpen, onDuplicate, onDelete }: Props) {
  const open = (id: string) => (event: MouseEvent) => {
    // A press with a modifier is the browser's: another tab, another window.
    if (event.metaKey || event.ctrlKey || event.shiftKey) return
    event.preventDefault()
    onOpen(id)
  }
  return (
    <ul className="start-rides">
      {rides.map((ride) => (
        <li key={ride.id} className="start-ride">
          <a className="start-ride-title" href={addressOf(ride.id)} onClick={open(ride.id)}>
            {ride.title || 'untitled ride'}
          </a>
          <p className="start-ride-meta">
            {ride.level} · {ride.slotMinutes} min · changed {changedWords(ride.changedAt, now)}
          </p>
          <div className="start-ride-actions">
            <Button tone="quiet" onClick={() => onDuplicate(ride.id)} aria-label={`duplicate ${ride.title}`}>
              duplicate
            </Button>
            <Button tone="quiet" onClick={() => onDelete(ride.id)} aria-label={`delete ${ride.title}`}>
              delete
            </Button>
          </div>
        </li>
      ))}
    </ul>
  )
}
