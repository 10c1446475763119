import { useState } from 'react'
import { MANY_A_DAY, weekOf } from '#engine/log/weekOf.ts'
import type { RideReport } from '#engine/report.ts'
import type { TaughtClass } from '#plan/kept/taught.ts'
import { joinWords, nameOfItem } from '#plan/names.ts'
import { Button } from '#ui/Button.tsx'
import { type Day, daysAfter, weekdayOf } from '#units/day.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { plural } from '#units/plural.ts'
import { firstWeekday, weekday } from '#words/forms.ts'
import { dayWords } from './clock.ts'

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
          week before
        </Button>
        <p role="status">from {dayWords(first)}</p>
        <Button tone="quiet" onClick={() => setDay(daysAfter(first, 7))}>
          week after
        </Button>
      </div>
      <table className="log-week">
        <tbody>
          {days.map(({ day: date, load, classes: own }) => (
            <tr key={date}>
              <th scope="row">{weekday(weekdayOf(date))}</th>
              <td>{own === 0 ? '' : plural(own, 'class', 'classes')}</td>
              <td className="log-number">{own === 0 ? '' : formatNumber(load, 0)}</td>
              <td className="log-bar">{load > 0 && <span style={{ width: `${(load / most) * 100}%` }} />}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        {classes === 0
          ? 'No class in this week.'
          : `${plural(classes, 'class', 'classes')}, load ${formatNumber(total, 0)} (effort × minutes of the blocks ridden).`}
      </p>
      {monotony !== null && strain !== null && (
        <p className="log-hint">
          Monotony {formatNumber(monotony, 1)} and strain {formatNumber(strain, 0)}: mean of the days ÷ their standard deviation, and that
          times the load (Foster 1998). A week of days alike strains more than the same load on hard and easy days.
        </p>
      )}
      {crowded && <p>{offTheBike(`${crowded.classes} classes on ${weekday(weekdayOf(crowded.day))}`, report)}</p>}
    </>
  )
}

/** A minute is the least to step down for. */
const LEAST_SECONDS = 60
const NAMED = 3

/** The blocks of the open ride that are best coached from the floor: the longest seated work. */
function offTheBike(many: string, report: RideReport | null): string {
  const general = `${many}: spare voice and legs, and coach some of it off the bike.`
  const seated = (report?.blocks ?? [])
    .filter(({ block, from, to }) => block.posture === 'seated' && to - from >= LEAST_SECONDS)
    .toSorted((a, b) => weight(b) - weight(a))
  const names = [...new Set(seated.map(({ block }) => `“${nameOfItem(block)}”`))].slice(0, NAMED)
  return names.length === 0 ? general : `${general} In the ride that is open ${joinWords(names)} would do: seated and a minute or longer.`
}

const weight = ({ block, from, to }: RideReport['blocks'][number]): number => ((block.effort.from + block.effort.to) / 2) * (to - from)
