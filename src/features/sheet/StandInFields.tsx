import { patchRide } from '#plan/commands/patchRide.ts'
import type { Ride, StandIn } from '#plan/model.ts'
import { isReadOnly } from '#store/placeSlice.ts'
import { useApp } from '#store/useApp.ts'
import { Disclosure } from '#ui/Disclosure.tsx'
import { Field } from '#ui/Field.tsx'
import { words } from '#words/words.ts'

const KEYS = ['room', 'regulars', 'mustDo', 'mustNot'] as const satisfies readonly (keyof StandIn)[]

/** What only the leader can tell a substitute; part of the ride, so that it travels with it. */
export function StandInFields({ ride }: { ride: Ride }) {
  const readOnly = useApp(isReadOnly)
  const run = useApp((state) => state.run)
  if (readOnly) return null
  const commit = (key: keyof StandIn) => (text: string) => {
    if ([...text].length > LONGEST) return words.sheet.keepUnder({ most: LONGEST })
    const next = { ...ride.standIn, [key]: text.trim() === '' ? undefined : text.trim() }
    const empty = Object.values(next).every((value) => value === undefined)
    run(patchRide({ standIn: empty ? undefined : next }))
    return null
  }
  return (
    <Disclosure className="sheet-more" summary={words.sheet.subNotes}>
      <div className="sheet-stand-in">
        {KEYS.map((key) => (
          <Field
            key={`${ride.id} ${key}`}
            label={words.sheet.subNote({ key })}
            rows={2}
            value={ride.standIn?.[key] ?? ''}
            placeholder={words.sheet.subNoteExample({ key })}
            onCommit={commit(key)}
          />
        ))}
      </div>
    </Disclosure>
  )
}

const LONGEST = 600
