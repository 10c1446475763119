import { useMemo, useState } from 'react'
import { checklist } from '#engine/prepare/checklist.ts'
import type { RideReport } from '#engine/report.ts'
import { keep, readKept } from '#features/sheet/remembered.ts'
import type { Ride } from '#plan/model.ts'
import { Button } from '#ui/Button.tsx'
import { tell, words } from '#words/words.ts'

const NAME = 'ticked'

/** The same list to tick on the screen. Ticks last for one ride at a time, over a reload too. */
export function ChecklistPart({ ride, report }: { ride: Ride; report: RideReport }) {
  const groups = useMemo(() => checklist(ride, report), [ride, report])
  const [ticked, setTicked] = useState<ReadonlySet<string>>(() => readTicks(ride.id))
  const change = (next: ReadonlySet<string>) => {
    setTicked(next)
    keep(NAME, JSON.stringify([ride.id, ...next]))
  }
  const toggle = (id: string) => {
    const next = new Set(ticked)
    if (!next.delete(id)) next.add(id)
    change(next)
  }
  const items = groups.flatMap((group) => group.items)
  const done = items.filter(({ id }) => ticked.has(id)).length
  return (
    <section className="sheet-ticks" aria-labelledby="sheet-ticks">
      <h2 id="sheet-ticks">
        {words.sheet.beforeClass} <span role="status">{words.sheet.done({ done, of: items.length })}</span>
      </h2>
      <div className="sheet-tick-groups">
        {groups.map(({ name, items: own }) => (
          <fieldset key={tell(name)}>
            <legend>{tell(name)}</legend>
            {own.map(({ id, text, detail }) => (
              <label key={id} className="sheet-tick">
                <input type="checkbox" checked={ticked.has(id)} onChange={() => toggle(id)} />
                <span>
                  {tell(text)}
                  {detail && <small>{tell(detail)}</small>}
                </span>
              </label>
            ))}
          </fieldset>
        ))}
      </div>
      <Button onClick={() => change(new Set())} disabled={done === 0}>
        {words.sheet.clearAll}
      </Button>
    </section>
  )
}

function readTicks(rideId: string): ReadonlySet<string> {
  try {
    const [id, ...ticks] = JSON.parse(readKept(NAME) ?? '[]') as string[]
    return new Set(id === rideId ? ticks : [])
  } catch {
    return new Set()
  }
}
