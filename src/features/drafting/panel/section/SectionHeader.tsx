import type { SectionReport } from '#engine/played.ts'
import type { Section } from '#plan/model.ts'
import { nameOfSection } from '#plan/names.ts'
import type { AppState } from '#store/state.ts'
import { useApp } from '#store/useApp.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatEights } from '#units/formatEights.ts'
import { formatNumber } from '#units/formatNumber.ts'

/** What a section is called and where it stands. */
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
        </>
      )}
    </header>
  )
}

/** How the blocks fill the section, and how much of it is talked through. */
export function SectionNotes({ sectionId }: { sectionId: string }) {
  const fill = useApp((state) => {
    const report = state.shownReport?.sections.find((section) => section.sectionId === sectionId)
    return report ? sayFill(report) : ''
  })
  const talk = useApp((state) => sayTalk(state, sectionId))
  if (!fill && !talk) return null
  return (
    <div className="panel-header">
      {fill && <p className="panel-fill">{fill}</p>}
      {talk && <p className="panel-where">{talk}</p>}
    </div>
  )
}

/** How much of the song is talked through, and by what most; empty in one that is left to itself. */
function sayTalk({ shownReport }: AppState, sectionId: string): string {
  const talk = shownReport?.cues.talk.find((one) => one.sectionId === sectionId)
  if (!shownReport || !talk || talk.seconds <= 0) return ''
  const longest = talk.longest === undefined ? undefined : shownReport.cues.lines[talk.longest]
  const cue = longest?.cue.text.trim()
  const most = longest && cue ? `, most at a time ${formatNumber(longest.to - longest.from, 1)} s: “${shortened(cue)}”` : ''
  return `talk ${Math.round(100 * talk.share)} % of it${most}`
}

const shortened = (text: string): string => (text.length > 40 ? `${text.slice(0, 38).trimEnd()}…` : text)

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
