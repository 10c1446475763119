import { useMemo, useState } from 'react'
import { repeatsOf } from '#engine/log/repeats.ts'
import { classesInSlot, inUsualRoom, type Slot, slotOf } from '#engine/log/slot.ts'
import { type Planned, taughtOf } from '#engine/log/taughtOf.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { Select } from '#ui/Select.tsx'
import { Source } from '#ui/Source.tsx'
import type { Day } from '#units/day.ts'
import { tell, words } from '#words/words.ts'

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
        label={words.log.against}
        value={key}
        choices={slots.map((slot) => ({ value: slot.key, label: tell(slot.name) }))}
        onChange={setChosen}
      />
      {novelty === null ? (
        <p className="log-hint">{words.log.nothingBefore}</p>
      ) : (
        <>
          <p className="log-figure">{words.log.newness({ share: novelty, compared })}</p>
          <p className="log-hint">
            {words.log.basedOn} <Source text={words.log.practice} />
          </p>
        </>
      )}
      {songs.length > 0 && (
        <ul className="log-songs">
          {songs.map(({ title, artist, times, weeksAgo, rest }) => (
            <li key={`${title}/${artist ?? ''}`}>
              <b>{title}</b>
              {rest && <span className="log-rest">{words.log.rest}</span>}
              <span className="log-hint">{words.log.playedIn({ times, compared, weeksAgo })}</span>
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
