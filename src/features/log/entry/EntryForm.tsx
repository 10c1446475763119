import { dayWords } from '#features/log/clock.ts'
import { DayField } from '#features/log/DayField.tsx'
import type { TaughtClass, TaughtSection } from '#plan/kept/taught.ts'
import { Button } from '#ui/Button.tsx'
import { Field } from '#ui/Field.tsx'
import { useKeptState } from '#ui/useKeptState.ts'
import { parseWallClock } from '#units/parseWallClock.ts'
import { SectionRow } from './SectionRow.tsx'

interface Props {
  entry: TaughtClass
  isNew: boolean
  onKeep: (entry: TaughtClass) => void
  onCancel: () => void
}

const LONGEST_NOTE = 10_000

/** A class as it was taught, put right song by song before it is kept. Nothing is kept before "keep". */
export function EntryForm({ entry, isNew, onKeep, onCancel }: Props) {
  const [draft, setDraft, forget] = useKeptState(`log ${isNew ? `${entry.rideId} ${entry.day}` : entry.id}`, entry)
  /** Takes a part and says that nothing is wrong with it. */
  const change = (patch: Partial<TaughtClass>): null => {
    setDraft((before) => ({ ...before, ...patch }))
    return null
  }
  const changeSection = (id: string, section: TaughtSection) =>
    setDraft((before) => ({ ...before, sections: before.sections.map((one) => (one.id === id ? section : one)) }))

  const clock = (key: 'bookedAt' | 'startedAt') => (text: string) => {
    if (text.trim() === '') return change({ [key]: undefined })
    const read = parseWallClock(text)
    if (!read.ok) return read.problem
    return change({ [key]: read.value })
  }
  const headCount = (text: string) => {
    if (text.trim() === '') return change({ headCount: undefined })
    const count = Number(text)
    if (!Number.isInteger(count) || count < 0 || count > 10_000) return 'Write how many rode as a whole number.'
    return change({ headCount: count })
  }
  const note = (text: string) => {
    if (text.length > LONGEST_NOTE) return `Keep it under ${LONGEST_NOTE} characters.`
    return change({ note: text.trim() === '' ? undefined : text })
  }
  return (
    <form
      className="log log-entry"
      aria-labelledby="log-entry"
      onSubmit={(event) => {
        event.preventDefault()
        forget()
        onKeep(draft)
      }}
    >
      <header className="log-head">
        <h1 id="log-entry">
          {draft.title}, {dayWords(draft.day)}
        </h1>
        <p>What is changed here changes the log alone, never the plan.</p>
      </header>
      <div className="log-when">
        <DayField label="day" day={draft.day} onChange={(day) => void change({ day })} />
        <Field label="booked at" value={draft.bookedAt ?? ''} onCommit={clock('bookedAt')} placeholder="18:30" />
        <Field label="really started at" value={draft.startedAt ?? ''} onCommit={clock('startedAt')} placeholder="18:34" />
        <Field
          label="where"
          value={draft.room}
          onCommit={(room) => (room.length > 120 ? 'Keep it under 120 characters.' : change({ room }))}
        />
        <Field
          label="head count"
          value={draft.headCount === undefined ? '' : String(draft.headCount)}
          inputMode="numeric"
          onCommit={headCount}
        />
      </div>
      <ol className="log-sections">
        {draft.sections.map((section, index) => (
          <SectionRow
            key={section.id}
            section={section}
            planned={entry.sections[index]!}
            number={index + 1}
            onChange={(next) => changeSection(section.id, next)}
          />
        ))}
      </ol>
      <Field
        label="private note"
        rows={3}
        value={draft.note ?? ''}
        onCommit={note}
        hint="What worked, who was hurt, what to tell yourself next time. Kept on this machine; in no link and no ride file."
      />
      <div className="log-actions">
        <Button tone="solid" type="submit">
          {isNew ? 'keep in the log' : 'keep the changes'}
        </Button>
        <Button
          onClick={() => {
            forget()
            onCancel()
          }}
        >
          leave it
        </Button>
      </div>
    </form>
  )
}
