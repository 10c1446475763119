import { type MouseEvent, useState } from 'react'
import type { SavedRide } from '#plan/kept/savedRide.ts'
import { folded, foundBy } from '#plan/search/folded.ts'
import { Button } from '#ui/Button.tsx'
import { Dialog } from '#ui/Dialog.tsx'
import { SearchField } from '#ui/SearchField.tsx'
import { tell, words } from '#words/words.ts'
import { changedWords } from './changedWords.ts'

interface Props {
  rides: readonly SavedRide[]
  /** Milliseconds since 1970. */
  now: number
  onOpen: (id: string) => void
  /** Another ride is to begin from it. */
  onStartFrom: (ride: SavedRide) => void
  onDelete: (id: string) => void
}

/** From how many rides on there is a field to find one by. */
const MANY = 8

/** The rides kept on this device, last changed first. One that cannot be read is listed with the reason and kept. */
export function SavedRides({ rides, now, onOpen, onStartFrom, onDelete }: Props) {
  const [doomed, setDoomed] = useState<SavedRide | null>(null)
  const [search, setSearch] = useState('')
  const sought = folded(search).split(' ')
  const many = rides.length >= MANY
  const found = many ? rides.filter((ride) => sought.every((word) => foundBy(titleOf(ride)).includes(word))) : rides
  const remove = (ride: SavedRide) => (ride.problem === undefined ? onDelete(ride.id) : setDoomed(ride))
  return (
    <>
      {many && (
        <div className="start-find">
          <SearchField value={search} placeholder={words.search.rideTitle} onChange={setSearch} />
        </div>
      )}
      {found.length === 0 && <p className="start-ride-meta">{words.search.nothing({ query: search.trim() })}</p>}
      <ul>
        {found.map((ride) => (
          <li key={ride.id} className="start-ride">
            {ride.problem === undefined ? (
              <RideLink ride={ride} onOpen={onOpen} />
            ) : (
              <span className="start-ride-title">{titleOf(ride)}</span>
            )}
            <p className="start-ride-meta">{ride.problem === undefined ? metaOf(ride, now) : tell(ride.problem)}</p>
            <div className="start-ride-actions">
              {ride.problem === undefined && (
                <Button
                  tone="quiet"
                  onClick={() => onStartFrom(ride)}
                  aria-label={words.ownPatterns.startFromRide({ title: titleOf(ride) })}
                >
                  {words.ownPatterns.startFrom}
                </Button>
              )}
              <Button tone="quiet" onClick={() => remove(ride)} aria-label={words.start.deleteRide({ title: titleOf(ride) })}>
                {words.start.delete}
              </Button>
            </div>
          </li>
        ))}
      </ul>
      {/* A ride that can be read is restored with one press; this one could not be. */}
      <Dialog
        open={doomed !== null}
        title={words.start.deleteForGoodTitle({ title: doomed ? titleOf(doomed) : '' })}
        closeLabel={words.start.cancel}
        onClose={() => setDoomed(null)}
        actions={
          <Button
            tone="solid"
            onClick={() => {
              if (doomed) onDelete(doomed.id)
              setDoomed(null)
            }}
          >
            {words.start.deleteForGood}
          </Button>
        }
      >
        <p>{words.start.deleteForGoodText}</p>
      </Dialog>
    </>
  )
}

function RideLink({ ride, onOpen }: { ride: SavedRide; onOpen: (id: string) => void }) {
  const open = (event: MouseEvent) => {
    // A press with a modifier is the browser's: another tab, another window.
    if (event.metaKey || event.ctrlKey || event.shiftKey) return
    event.preventDefault()
    onOpen(ride.id)
  }
  return (
    <a className="start-ride-title" href={`#/draft/${ride.id}`} onClick={open}>
      {titleOf(ride)}
    </a>
  )
}

const titleOf = (ride: SavedRide): string => ride.title || words.names.untitled

function metaOf({ level, slotMinutes, updated }: SavedRide, now: number): string {
  const { names, start } = words
  const about = [
    level && names.level({ level }),
    slotMinutes === undefined ? undefined : start.minutes({ minutes: slotMinutes }),
    start.changed({ when: changedWords(updated, now) }),
  ]
  return about.filter((part) => part !== undefined).join(' · ')
}
