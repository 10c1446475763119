import { useMemo, useState } from 'react'
import { repeatsOf } from '#engine/log/repeats.ts'
import { classesInSlot, inUsualRoom, type Slot, slotOf } from '#engine/log/slot.ts'
import { type Planned, taughtOf } from '#engine/log/taughtOf.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { Select } from '#ui/Select.tsx'
import type { Day } from '#units/day.ts'
import { tell } from '#words/words.ts'

interface Props {
  planned: Planned
  /** Of the class to come. */
  day: Day
  log: readonly TaughtClass[]
}

/** How new the ride is to those who come to a slot, and which songs they have had enough of. */
export function RepeatsPart({ planned, day, log }: Props) {
  const entry = useMemo(() => taughtOf(planned, { id: 'planned', day, bookedAt: planned.ride.startsAt }), [planned, day])
  const own = useMemo(() => slotOf(inUsualRoom(entry, log)), [entry, log])
  const slots = useMemo(() => slotsOf(log, own), [log, own])
  const [chosen, setChosen] = useState<string | null>(null)
  const key = slots.find((slot) => slot.key === chosen)?.key ?? own.key
  const before = classesInSlot(log, key, day)
  const { novelty, compared, songs } = repeatsOf(entry, day, before)
  return (
    <>
      <Select
        label="against the last classes of"
        value={key}
        choices={slots.map((slot) => ({ value: slot.key, label: tell(slot.name) }))}
        onChange={setChosen}
      />
      {novelty === null ? (
        <p className="log-hint">No class of this slot is in the log before that day.</p>
      ) : (
        <>
          <p className="log-figure">
            <b>{Math.round(novelty * 100)} %</b> new to those who came to the last {compared === 1 ? 'class' : `${compared} classes`}.
          </p>
          <p className="log-hint">
            Songs count half, runs of moves three tenths, the arc of effort two tenths; each class further back counts less (common
            practice).
          </p>
        </>
      )}
      {songs.length > 0 && (
        <ul className="log-songs">
          {songs.map(({ title, artist, times, weeksAgo, rest }) => (
            <li key={`${title}/${artist ?? ''}`}>
              <b>{title}</b>
              {rest && <span className="log-rest">let it rest</span>}
              <span className="log-hint">
                in {times} of the last {compared},{' '}
                {weeksAgo === 0 ? 'less than a week ago' : weeksAgo === 1 ? 'a week ago' : `${weeksAgo} weeks ago`}
              </span>
            </li>
          ))}
        </ul>
      )}
    </>
  )
}

/** The ride's own slot first, then those in the log. */
function slotsOf(log: readonly TaughtClass[], own: Slot): Slot[] {
  const slots = new Map([[own.key, own]])
  for (const taught of log) {
    const slot = slotOf(taught)
    if (!slots.has(slot.key)) slots.set(slot.key, slot)
  }
  return [...slots.values()]
}
