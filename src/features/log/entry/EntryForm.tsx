import { DayField } from '#features/log/DayField.tsx'
import type { TaughtClass, TaughtSection } from '#plan/kept/taught.ts'
import { Button } from '#ui/Button.tsx'
import { Field } from '#ui/Field.tsx'
import { useKeptState } from '#ui/useKeptState.ts'
import { parseWallClock } from '#units/parseWallClock.ts'
import { wallClock } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { SectionRow } from './SectionRow.tsx'

interface Props {
  entry: TaughtClass
  isNew: boolean
  onKeep: (entry: TaughtClass) => void
  onCancel: () => void
}

const LONGEST_NOTE = 10_000

/** A class as it was taught, put right song by song before it is saved. Nothing is saved before "save". */
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
    if (!Number.isInteger(count) || count < 0 || count > 10_000) return words.log.notCount
    return change({ headCount: count })
  }
  const note = (text: string) => {
    if (text.length > LONGEST_NOTE) return words.log.tooLong({ most: LONGEST_NOTE })
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
        <h1 id="log-entry">{words.log.entryTitle(draft)}</h1>
        <p>{words.log.entryAbout}</p>
      </header>
      <div className="log-when">
        <DayField label={words.log.entryDay} day={draft.day} onChange={(day) => void change({ day })} />
        <Field
          label={words.log.scheduled}
          value={shown(draft.bookedAt)}
          onCommit={clock('bookedAt')}
          placeholder={words.log.timeExample({ time: '18:30' })}
        />
        <Field
          label={words.log.actual}
          value={shown(draft.startedAt)}
          onCommit={clock('startedAt')}
          placeholder={words.log.timeExample({ time: '18:34' })}
        />
        <Field
          label={words.log.room}
          value={draft.room}
          onCommit={(room) => (room.length > 120 ? words.log.tooLong({ most: 120 }) : change({ room }))}
        />
        <Field
          label={words.log.headCount}
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
      <Field label={words.log.note} rows={3} value={draft.note ?? ''} onCommit={note} hint={words.log.noteHint} />
      <div className="log-actions">
        <Button tone="solid" type="submit">
          {isNew ? words.log.save : words.log.saveChanges}
        </Button>
        <Button
          onClick={() => {
            forget()
            onCancel()
          }}
        >
          {words.log.cancel}
        </Button>
      </div>
    </form>
  )
}

/** A time of day as the locale writes it, which is also read. */
const shown = (time: string | undefined): string => (time === undefined ? '' : wallClock(time))
