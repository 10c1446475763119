import { patchRide } from '#plan/commands/patchRide.ts'
import type { Ride, StandIn } from '#plan/model.ts'
import { isReadOnly } from '#store/placeSlice.ts'
import { useApp } from '#store/useApp.ts'
import { Disclosure } from '#ui/Disclosure.tsx'
import { Field } from '#ui/Field.tsx'

const FIELDS: readonly { key: keyof StandIn; label: string; placeholder: string }[] = [
  { key: 'room', label: 'the room', placeholder: 'key at the desk; sound on the left; bike 7 has no brake pad' },
  { key: 'regulars', label: 'what regulars expect', placeholder: 'a long first climb, a quiet last song' },
  { key: 'mustDo', label: 'must do', placeholder: 'leave at ten to: the next class waits' },
  { key: 'mustNot', label: 'must not', placeholder: 'no lights off' },
]

/** What only the leader can tell a substitute; part of the ride, so that it travels with it. */
export function StandInFields({ ride }: { ride: Ride }) {
  const readOnly = useApp(isReadOnly)
  const run = useApp((state) => state.run)
  if (readOnly) return null
  const commit = (key: keyof StandIn) => (text: string) => {
    if ([...text].length > LONGEST) return `Keep it under ${LONGEST} characters.`
    const next = { ...ride.standIn, [key]: text.trim() === '' ? undefined : text.trim() }
    const empty = Object.values(next).every((value) => value === undefined)
    run(patchRide({ standIn: empty ? undefined : next }))
    return null
  }
  return (
    <Disclosure className="sheet-more" summary="notes for the substitute">
      <div className="sheet-stand-in">
        {FIELDS.map(({ key, label, placeholder }) => (
          <Field
            key={`${ride.id} ${key}`}
            label={label}
            rows={2}
            value={ride.standIn?.[key] ?? ''}
            placeholder={placeholder}
            onCommit={commit(key)}
          />
        ))}
      </div>
    </Disclosure>
  )
}

const LONGEST = 600
