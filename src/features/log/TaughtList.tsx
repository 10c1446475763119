import { useState } from 'react'
import { loadOf } from '#engine/log/weekOf.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { SearchField } from '#ui/SearchField.tsx'
import { words } from '#words/words.ts'
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
          {words.log.deleted(removed)} <Button onClick={() => void restore()}>{words.log.restore}</Button>
        </p>
      )}
      {log.length === 0 && <p className="log-hint">{words.log.empty}</p>}
      {log.length > FIRST && <SearchField value={search} placeholder={words.log.search} onChange={setSearch} />}
      {log.length > 0 && found.length === 0 && <p>{words.log.notFound({ search: search.trim() })}</p>}
      <ol className="log-list">
        {shown.map((entry) => (
          <li key={entry.id}>
            <p className="log-entry-title">
              <b>{entry.title}</b> {dayWords(entry.day)}
            </p>
            <p className="log-hint">{factsOf(entry).join(' · ')}</p>
            {entry.note && <p>{entry.note}</p>}
            <div className="log-actions">
              <Button tone="quiet" onClick={() => onEdit(entry)} aria-label={words.log.editEntry(entry)}>
                {words.log.edit}
              </Button>
              <Button tone="quiet" onClick={() => void remove(entry.id)} aria-label={words.log.removeEntry(entry)}>
                {words.log.remove}
              </Button>
            </div>
          </li>
        ))}
      </ol>
      {found.length > FIRST && (
        <Button onClick={() => setWhole(!whole)} aria-expanded={whole}>
          {whole ? words.log.onlyLast({ count: FIRST }) : words.log.showAll({ count: found.length })}
        </Button>
      )}
    </>
  )
}

function factsOf(entry: TaughtClass): string[] {
  const { startedAt, bookedAt, room, headCount, sections } = entry
  const amount = (outcome: string) => sections.filter((section) => section.outcome === outcome).length
  const loved = sections.filter(({ stars }) => stars === 5).map(words.log.fiveStars)
  return [
    ...(startedAt ? [words.log.started({ at: startedAt, booked: bookedAt && bookedAt !== startedAt ? bookedAt : null })] : []),
    ...(room === '' ? [] : [room]),
    ...(headCount === undefined ? [] : [words.log.rode({ count: headCount })]),
    ...(amount('skipped') > 0 ? [words.log.skipped({ count: amount('skipped') })] : []),
    ...(amount('changed') > 0 ? [words.log.changed({ count: amount('changed') })] : []),
    words.log.load({ load: loadOf(entry) }),
    ...loved,
  ]
}
