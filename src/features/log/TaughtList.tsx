import { useState } from 'react'
import { loadOf } from '#engine/log/weekOf.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { SearchField } from '#ui/SearchField.tsx'
import { formatNumber } from '#units/formatNumber.ts'
import { dayWords } from './clock.ts'
import { findTaught } from './findTaught.ts'

interface Props {
  log: readonly TaughtClass[]
  onEdit: (entry: TaughtClass) => void
}

/** Classes shown at first: what lies under the list stays near. */
const FIRST = 10

/** The log itself, newest first; of a long one the last classes, and those that are looked for. */
export function TaughtList({ log, onEdit }: Props) {
  const remove = useApp((state) => state.removeTaught)
  const removed = useApp((state) => state.removedTaught)
  const restore = useApp((state) => state.restoreTaught)
  const [search, setSearch] = useState('')
  const [whole, setWhole] = useState(false)
  const found = findTaught(log, search)
  const shown = whole ? found : found.slice(0, FIRST)
  return (
    <>
      {removed && (
        <p className="log-removed">
          Deleted “{removed.title}” of {dayWords(removed.day)}. <Button onClick={() => void restore()}>put it back</Button>
        </p>
      )}
      {log.length === 0 && (
        <p className="log-hint">Nothing yet. Open a ride you have taught and log it here; everything stays on this machine.</p>
      )}
      {log.length > FIRST && <SearchField value={search} placeholder="ride, song, day, room or note" onChange={setSearch} />}
      {log.length > 0 && found.length === 0 && <p>No class in the log has “{search.trim()}” in it.</p>}
      <ol className="log-list">
        {shown.map((entry) => (
          <li key={entry.id}>
            <p className="log-entry-title">
              <b>{entry.title}</b> {dayWords(entry.day)}
            </p>
            <p className="log-hint">{factsOf(entry).join(' · ')}</p>
            {entry.note && <p>{entry.note}</p>}
            <div className="log-actions">
              <Button tone="quiet" onClick={() => onEdit(entry)} aria-label={`change ${entry.title} of ${entry.day}`}>
                change
              </Button>
              <Button tone="quiet" onClick={() => void remove(entry.id)} aria-label={`delete ${entry.title} of ${entry.day}`}>
                delete
              </Button>
            </div>
          </li>
        ))}
      </ol>
      {found.length > FIRST && (
        <Button onClick={() => setWhole(!whole)} aria-expanded={whole}>
          {whole ? `only the last ${FIRST}` : `show all ${found.length}`}
        </Button>
      )}
    </>
  )
}

function factsOf(entry: TaughtClass): string[] {
  const { startedAt, bookedAt, room, headCount, sections } = entry
  const amount = (outcome: string) => sections.filter((section) => section.outcome === outcome).length
  const loved = sections.filter(({ stars }) => stars === 5).map(({ title }) => `five stars for “${title}”`)
  return [
    ...(startedAt ? [bookedAt && bookedAt !== startedAt ? `started ${startedAt}, booked ${bookedAt}` : `started ${startedAt}`] : []),
    ...(room === '' ? [] : [room]),
    ...(headCount === undefined ? [] : [`${headCount} rode`]),
    ...(amount('skipped') > 0 ? [`${amount('skipped')} skipped`] : []),
    ...(amount('changed') > 0 ? [`${amount('changed')} changed`] : []),
    `load ${formatNumber(loadOf(entry), 0)}`,
    ...loved,
  ]
}
