import { useEffect, useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { LOG, LOG_CLASS } from '#features/log/actions/logClass.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'
import { dayAt } from './clock.ts'
import { DayField } from './DayField.tsx'
import { EntryForm } from './entry/EntryForm.tsx'
import { freshEntry } from './entry/freshEntry.ts'
import { RepeatsPart } from './RepeatsPart.tsx'
import { SongsUsed, type WriteTable } from './songs/SongsUsed.tsx'
import { TaughtList } from './TaughtList.tsx'
import { WeekPart } from './WeekPart.tsx'
import './log.css'

interface Props {
  /** Milliseconds since 1970. */
  now: () => number
  writeTable: WriteTable
}

/** After class: what was taught, what repeats, the instructor's own week, and the songs used. */
export function LogPlace({ now, writeTable }: Props) {
  const store = useAppStore()
  const shown = useApp((state) => state.shown)
  const report = useApp((state) => state.shownReport)
  const taught = useApp((state) => state.taught)
  const keepsLog = useApp((state) => state.keepsLog)
  const [today] = useState(() => dayAt(now()))
  const [day, setDay] = useState(today)
  const [editing, setEditing] = useState<TaughtClass | null>(null)
  useEffect(() => void store.getState().refreshTaught(), [store])
  const asked = useApp((state) => state.entryAsked)
  useEffect(() => {
    if (!asked) return
    const state = store.getState()
    if (state.shown && state.keepsLog) setEditing(freshEntry(state, now()))
    state.entryOpened()
  }, [asked, store, now])

  const on = { store, enter: () => setEditing(freshEntry(store.getState(), now())) }
  usePlaceActions(LOG, () => (editing ? null : on))

  const keep = async (entry: TaughtClass) => {
    if (await store.getState().keepTaught(entry)) setEditing(null)
  }
  if (editing)
    return (
      <EntryForm
        key={editing.id}
        entry={editing}
        isNew={!taught.some(({ id }) => id === editing.id)}
        onKeep={keep}
        onCancel={() => setEditing(null)}
      />
    )
  return (
    <div className="log">
      <header className="log-head">
        <h1>{words.log.heading}</h1>
        {!keepsLog && <p>{words.log.cannotKeep}</p>}
        <ActionButton action={LOG_CLASS} on={on} tone="solid" />
      </header>
      <div className="log-columns">
        <div className="log-column">
          {shown && report && (
            <section aria-labelledby="log-repeats">
              <h2 id="log-repeats">{words.log.repeats}</h2>
              <DayField label={words.log.classOn} day={day} onChange={setDay} />
              <RepeatsPart planned={{ ride: shown, report }} day={day} log={taught} />
            </section>
          )}
          <section aria-labelledby="log-taught">
            <h2 id="log-taught">{words.log.taught}</h2>
            <TaughtList log={taught} onEdit={setEditing} />
          </section>
        </div>
        <div className="log-column">
          <section aria-labelledby="log-week">
            <h2 id="log-week">{words.log.week}</h2>
            <WeekPart log={taught} today={today} report={report} />
          </section>
        </div>
      </div>
      <section aria-labelledby="log-songs" className="log-print">
        <h2 id="log-songs">{words.log.songs}</h2>
        <SongsUsed log={taught} today={today} writeTable={writeTable} />
      </section>
    </div>
  )
}
