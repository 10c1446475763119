import { useState } from 'react'
import { MANY_A_DAY, weekOf } from '#engine/log/weekOf.ts'
import type { RideReport } from '#engine/report.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { quotedItem } from '#plan/names.ts'
import { Button } from '#ui/Button.tsx'
import { Source } from '#ui/Source.tsx'
import { type Day, daysAfter, weekdayOf } from '#units/day.ts'
import { firstWeekday, number, weekday } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'

interface Props {
  log: readonly TaughtClass[]
  today: Day
  /** Of the ride that is open, for what of it can be coached off the bike. */
  report: RideReport | null
}

/** What the week takes out of the one who teaches it, when all of it is ridden. */
export function WeekPart({ log, today, report }: Props) {
  const [day, setDay] = useState(today)
  const { first, days, classes, total, monotony, strain } = weekOf(log, day, firstWeekday())
  const most = Math.max(...days.map(({ load }) => load))
  const crowded = days.find((one) => one.classes >= MANY_A_DAY)
  return (
    <>
      <div className="log-week-head">
        <Button tone="quiet" onClick={() => setDay(daysAfter(first, -7))}>
          {words.log.weekBefore}
        </Button>
        <p role="status">{words.log.weekOf({ day: first })}</p>
        <Button tone="quiet" onClick={() => setDay(daysAfter(first, 7))}>
          {words.log.weekAfter}
        </Button>
      </div>
      <table className="log-week">
        <tbody>
          {days.map(({ day: date, load, classes: own }) => (
            <tr key={date}>
              <th scope="row">{weekday(weekdayOf(date))}</th>
              <td>{own === 0 ? '' : words.log.classes({ count: own })}</td>
              <td className="log-number">{own === 0 ? '' : number(load, 0)}</td>
              <td className="log-bar">{load > 0 && <span style={{ width: `${(load / most) * 100}%` }} />}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{classes === 0 ? words.log.noClass : words.log.weekLoad({ count: classes, load: total })}</p>
      {monotony !== null && strain !== null && (
        <p className="log-hint">
          {words.log.mixDays} <Source text={words.log.monotony({ monotony, strain })} />
        </p>
      )}
      {crowded && <p>{offTheBike(words.log.crowded({ count: crowded.classes, day: weekday(weekdayOf(crowded.day)) }), report)}</p>}
    </>
  )
}

/** A minute is the least to step down for. */
const LEAST_SECONDS = 60
const NAMED = 3

/** The blocks of the open ride that are best coached from the floor: the longest seated work. */
function offTheBike(general: string, report: RideReport | null): string {
  const seated = (report?.blocks ?? [])
    .filter(({ block, from, to }) => block.posture === 'seated' && to - from >= LEAST_SECONDS)
    .toSorted((a, b) => weight(b) - weight(a))
  const names = [...new Set(seated.map(({ block }) => tell(quotedItem(block))))].slice(0, NAMED)
  return names.length === 0 ? general : `${general} ${words.log.offTheBike({ names })}`
}

const weight = ({ block, from, to }: RideReport['blocks'][number]): number => ((block.effort.from + block.effort.to) / 2) * (to - from)
