import type { SectionReport } from '#engine/played.ts'
import type { Section } from '#plan/model.ts'
import { sectionName } from '#plan/names.ts'
import type { AppState } from '#store/state.ts'
import { useApp } from '#store/useApp.ts'
import { clock } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'

/** What a section is called and where it stands. */
export function SectionHeader({ section }: { section: Section }) {
  const name = useApp((state) => state.shown && tell(sectionName(state.shown, section)))
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
            {words.panelsSong.where({ place, from: report.one, to: report.to })}
            {report.counts && ` · ${words.measures.eights(report.counts.total, report.unit.eight)}`}
          </p>
          <p className="panel-where">
            {words.panelsSong.resistanceInOut({ enters: tell(report.entersAt), leaves: tell(report.leavesAt) })}
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
  const { share } = talk
  if (!longest || !cue) return words.panelsSong.talking({ share })
  return words.panelsSong.talkingLongest({ share, seconds: longest.to - longest.from, words: shortened(cue) })
}

const shortened = (text: string): string => (text.length > 40 ? `${text.slice(0, 38).trimEnd()}…` : text)

/** What the blocks leave open or run past, and how the changes sit; empty where all is covered and aligned. */
function sayFill({ counts, unit, open, beyond, aligned }: SectionReport): string {
  const amount = (value: number) => (counts ? words.measures.eights(value, unit.eight) : clock(value))
  const said = [
    open > 0 && words.panelsSong.notCovered({ amount: amount(open) }),
    beyond > 0 && words.panelsSong.pastEnd({ amount: amount(beyond) }),
    aligned !== null && aligned < 1 && words.panelsSong.aligned({ share: aligned, group: unit.name }),
  ]
  return said.filter((part) => part !== false).join(' · ')
}
