import type { SectionReport } from '#engine/report.ts'
import type { Section } from '#plan/model.ts'
import { nameOfSection } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatEights } from '#units/formatEights.ts'

/** What a section is called, where it stands, and how its blocks fill it. */
export function SectionHeader({ section }: { section: Section }) {
  const name = useApp((state) => state.shown && nameOfSection(state.shown, section))
  const place = useApp((state) => (state.shown?.sections.findIndex(({ id }) => id === section.id) ?? 0) + 1)
  const report = useApp((state) => state.shownReport?.sections.find(({ sectionId }) => sectionId === section.id))
  return (
    <header className="panel-header">
      <h2>
        <span className="panel-name">{name}</span>
      </h2>
      {report && (
        <>
          <p className="panel-where">
            {`section ${place} · ${formatClock(report.one)} to ${formatClock(report.to)}`}
            {report.counts && ` · ${formatEights(report.counts.total, report.unit.eight)}`}
          </p>
          <p className="panel-where">
            enters at {report.entersAt}, leaves at {report.leavesAt}
          </p>
          {sayFill(report) && <p className="panel-fill">{sayFill(report)}</p>}
        </>
      )}
    </header>
  )
}

/** What the blocks leave open or run past, and how the changes sit; empty where all is covered and aligned. */
function sayFill({ counts, unit, open, beyond, aligned }: SectionReport): string {
  const amount = (value: number) => (counts ? formatEights(value, unit.eight) : formatClock(value))
  const said = [
    open > 0 && `${amount(open)} of the song not covered`,
    beyond > 0 && `${amount(beyond)} beyond the end`,
    aligned !== null && aligned < 1 && `${Math.round(aligned * 100)} % of the changes on the ${unit.name} or better`,
  ]
  return said.filter((part) => part !== false).join(' · ')
}
