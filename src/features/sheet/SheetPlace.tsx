import { useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { PRINT } from '#features/sheet/actions/print.ts'
import { SHEET } from '#features/sheet/actions/sheetPlaces.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Segmented } from '#ui/Segmented.tsx'
import { words } from '#words/words.ts'
import { ChosenSheet } from './ChosenSheet.tsx'
import type { SongClock } from './contents/contents.ts'
import { ExportPart } from './ExportPart.tsx'
import type { MakeExport } from './exportKinds.ts'
import { LARGE_METERS, SHEET_METERS } from './legibility.ts'
import { PAPERS, type Paper } from './paging/paper.ts'
import { useKeptChoice } from './remembered.ts'
import { ShorthandField } from './ShorthandField.tsx'
import { StandInFields } from './StandInFields.tsx'
import { isCueSheet, SHEET_KINDS } from './sheets.ts'
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

const CARD_PAGES = ['four', 'one'] as const
const SONG_CLOCKS: readonly SongClock[] = ['left', 'elapsed']
const BOTH = 'both'

const sheetChoices = () => SHEET_KINDS.map((kind) => ({ value: kind, label: words.sheet.kindName({ kind }) }))
const paperChoices = () => PAPERS.map((paper) => ({ value: paper, label: words.sheet.paperName({ paper }) }))
const cardChoices = () => CARD_PAGES.map((cards) => ({ value: cards, label: words.sheet.cardsName({ cards }) }))
const clockChoices = () => SONG_CLOCKS.map((clock) => ({ value: clock, label: words.sheet.songClockName({ clock }) }))

/** The printable sheets of the ride on the screen. */
export function SheetPlace({ today, day, makeExport }: SheetPlaceProps) {
  const on = { store: useAppStore() }
  usePlaceActions(SHEET, () => on)
  const ride = useApp((state) => state.shown)
  const report = useApp((state) => state.shownReport)
  const [kind, setKind] = useKeptChoice('sheet', SHEET_KINDS, () => 'compact')
  const [paper, setPaper] = useKeptChoice('paper', PAPERS, usualPaper)
  const [cards, setCards] = useKeptChoice('cards', CARD_PAGES, () => 'four')
  const [songClock, setSongClock] = useState<SongClock>('left')
  const [reader, setReader] = useState<string>(BOTH)
  const shorthand = useShorthand()
  if (!ride || !report) return null

  const cue = isCueSheet(kind)
  const readers = [{ value: BOTH, label: words.sheet.both }, ...ride.leaders.map(({ id, name }) => ({ value: id, label: name }))]
  const known = readers.some(({ value }) => value === reader) ? reader : BOTH
  return (
    <section className="sheet-place" aria-label={words.sheet.place}>
      <h1 className="ui-hidden">{words.sheet.heading({ title: ride.title || words.names.untitled })}</h1>
      <div className="sheet-bar-of-choices">
        <Segmented label={words.sheet.kind} value={kind} choices={sheetChoices()} onChange={setKind} />
        {kind !== 'phone' && <Segmented label={words.sheet.paper} value={paper} choices={paperChoices()} onChange={setPaper} />}
        {kind === 'cards' && <Segmented label={words.sheet.cards} value={cards} choices={cardChoices()} onChange={setCards} />}
        {cue && <Segmented label={words.sheet.songClock} value={songClock} choices={clockChoices()} onChange={setSongClock} />}
        {cue && ride.leaders.length > 1 && <Segmented label={words.sheet.madeFor} value={known} choices={readers} onChange={setReader} />}
        <ActionButton action={PRINT} on={on} tone="solid" />
      </div>
      <p className="sheet-hint">{words.sheet.hint({ kind, meters: kind === 'large' ? LARGE_METERS : SHEET_METERS })}</p>
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
