import { useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { PRINT } from '#features/sheet/actions/print.ts'
import { SHEET } from '#features/sheet/actions/sheetPlaces.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Segmented } from '#ui/Segmented.tsx'
import { ChosenSheet } from './ChosenSheet.tsx'
import type { SongClock } from './contents/contents.ts'
import { ExportPart } from './ExportPart.tsx'
import type { MakeExport } from './exportKinds.ts'
import { PAPERS, type Paper } from './paging/paper.ts'
import { useKeptChoice } from './remembered.ts'
import { ShorthandField } from './ShorthandField.tsx'
import { StandInFields } from './StandInFields.tsx'
import { isCueSheet, SHEET_KINDS, SHEETS } from './sheets.ts'
import { useShorthand } from './useShorthand.ts'
import { EmptySheet } from './view/EmptySheet.tsx'
import './SheetPlace.css'

interface SheetPlaceProps {
  /** The day of printing, ready to read; the clock belongs to the app. */
  today: string
  /** The same day as "2026-11-25". */
  day: string
  makeExport: MakeExport
}

const PAPER_CHOICES = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'US Letter' },
] as const
const CLOCK_CHOICES = [
  { value: 'left', label: 'time left' },
  { value: 'elapsed', label: 'since the one' },
] as const
const CARD_CHOICES = [
  { value: 'four', label: 'four a page' },
  { value: 'one', label: 'one a page' },
] as const
const BOTH = 'both'

/** The printable sheets of the ride on the screen. */
export function SheetPlace({ today, day, makeExport }: SheetPlaceProps) {
  const on = { store: useAppStore() }
  usePlaceActions(SHEET, () => on)
  const ride = useApp((state) => state.shown)
  const report = useApp((state) => state.shownReport)
  const [kind, setKind] = useKeptChoice('sheet', SHEET_KINDS, () => 'compact')
  const [paper, setPaper] = useKeptChoice('paper', PAPERS, usualPaper)
  const [cards, setCards] = useKeptChoice('cards', ['four', 'one'] as const, () => 'four')
  const [songClock, setSongClock] = useState<SongClock>('left')
  const [reader, setReader] = useState<string>(BOTH)
  const shorthand = useShorthand()
  if (!ride || !report) return null

  const cue = isCueSheet(kind)
  const readers = [{ value: BOTH, label: 'both' }, ...ride.leaders.map(({ id, name }) => ({ value: id, label: name }))]
  const known = readers.some(({ value }) => value === reader) ? reader : BOTH
  return (
    <section className="sheet-place" aria-label="sheet">
      <h1 className="ui-hidden">Sheet of {ride.title || 'an untitled ride'}</h1>
      <div className="sheet-bar-of-choices">
        <Segmented label="sheet" value={kind} choices={SHEETS} onChange={setKind} />
        {kind !== 'phone' && <Segmented label="paper" value={paper} choices={PAPER_CHOICES} onChange={setPaper} />}
        {kind === 'cards' && <Segmented label="cards" value={cards} choices={CARD_CHOICES} onChange={setCards} />}
        {cue && <Segmented label="song clock" value={songClock} choices={CLOCK_CHOICES} onChange={setSongClock} />}
        {cue && ride.leaders.length > 1 && <Segmented label="made for" value={known} choices={readers} onChange={setReader} />}
        <ActionButton action={PRINT} on={on} tone="solid" />
      </div>
      <p className="sheet-hint">{SHEETS.find(({ value }) => value === kind)!.hint}</p>
      {cue && <ShorthandField {...shorthand} />}
      {kind === 'substitute' && <StandInFields ride={ride} />}
      {report.blocks.length > 0 && <ExportPart key={ride.id} {...{ ride, report, makeExport }} today={day} />}
      {report.blocks.length === 0 ? (
        <EmptySheet ride={ride} paper={paper} />
      ) : (
        <ChosenSheet
          key={kind}
          {...{ kind, ride, report, paper, songClock }}
          reader={known === BOTH ? undefined : known}
          fourUp={cards === 'four'}
          shorthand={shorthand.terms}
          date={today}
        />
      )}
    </section>
  )
}

/** Where letter paper is in every printer. */
const LETTER_LANDS = /-(US|CA|MX|PH|CL|CO|VE)$/i

/** The paper usual where the page's user lives. */
const usualPaper = (): Paper => (LETTER_LANDS.test(navigator.language) ? 'letter' : 'a4')
