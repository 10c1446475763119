import { lazy, Suspense, useEffect, useLayoutEffect, useMemo, useRef } from 'react'
import { ActionBoardProvider, usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { BackupPart } from '#features/backup/BackupPart.tsx'
import { RestoreDialog } from '#features/backup/RestoreDialog.tsx'
import { ReceivedBar } from '#features/handover/ReceivedBar.tsx'
import type { WriteTable } from '#features/log/songs/SongsUsed.tsx'
import { VersionsPart } from '#features/merging/VersionsPart.tsx'
import type { MakeExport } from '#features/sheet/exportKinds.ts'
import { NewFromRide } from '#features/start/NewFromRide.tsx'
import { StartPlace } from '#features/start/StartPlace.tsx'
import { readSongList } from '#formats/readSongList.ts'
import type { LeadClock } from '#store/leadClock.ts'
import { type Place, standsAlone } from '#store/placeSlice.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { LiveRegion } from '#ui/LiveRegion.tsx'
import { useKeptFocus } from '#ui/useKeptFocus.ts'
import { moment } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { EVERYWHERE } from './actions/everywhere.ts'
import { FINDING } from './actions/find.ts'
import { ShellToolsContext, useShellGround } from './actions/shellGround.ts'
import { downloadRide } from './downloadRide.ts'
import { ErrorBoundary } from './ErrorBoundary.tsx'
import { Header } from './Header.tsx'
import { isoDay } from './isoDay.ts'
import { Notices } from './Notices.tsx'
import { ReadOnBar } from './ReadOnBike.tsx'
import { useFetchedDialog } from './useFetchedDialog.tsx'
import { useFileDrop } from './useFileDrop.ts'
import './app.css'

// Places are fetched when first gone to: the chart library alone is heavier than all the rest.
const DraftPlace = lazy(() => import('#features/drafting/DraftPlace.tsx').then((module) => ({ default: module.DraftPlace })))
const SheetPlace = lazy(() => import('#features/sheet/SheetPlace.tsx').then((module) => ({ default: module.SheetPlace })))
const SetupPlace = lazy(() => import('#features/setup/SetupPlace.tsx').then((module) => ({ default: module.SetupPlace })))
const LeadPlace = lazy(() => import('#features/leading/LeadPlace.tsx').then((module) => ({ default: module.LeadPlace })))
const HandOverPlace = lazy(() => import('#features/handover/HandOverPlace.tsx').then((module) => ({ default: module.HandOverPlace })))
const LogPlace = lazy(() => import('#features/log/LogPlace.tsx').then((module) => ({ default: module.LogPlace })))
const SongsPlace = lazy(() => import('#features/songs/SongsPlace.tsx').then((module) => ({ default: module.SongsPlace })))
const MergePlace = lazy(() => import('#features/merging/MergePlace.tsx').then((module) => ({ default: module.MergePlace })))

/** The key map names the actions of every place, and so does the box that finds anything. */
const fetchKeyMap = async () => (await import('./KeyMap.tsx')).KeyMap
const noKeyMap = () => words.app.shortcutsNotFetched
const fetchFinder = async () => (await import('./search/Finder.tsx')).Finder
const noFinder = () => words.search.notFetched
const fetchUndoMenu = async () => (await import('./UndoMenu.tsx')).UndoMenu
const noUndoMenu = () => words.undoList.notFetched

/** Fetched when a code is first shown. */
const qrOf = async (text: string) => (await import('#formats/qr/qrModules.ts')).qrModules(text)

interface Props {
  /** Milliseconds since 1970. */
  now: () => number
  /** The clock classes are led by. */
  leadClock: LeadClock
  /** Leads the class here that another window leads. */
  onTakeOver: () => void
  /** Loads the page anew. */
  onReload: () => void
  onOpenFile: (file: File) => void
  /** Opens the link in a text as its address would. */
  onOpenLink: (text: string) => void
  /** Takes what was dropped on the page. */
  onDropFiles: (files: File[]) => void
}

/** The shell: a head, what must be known, and the place one is in. */
export function App({ now, leadClock, onTakeOver, onReload, onOpenFile, onOpenLink, onDropFiles }: Props) {
  const store = useAppStore()
  const place = useApp((state) => (state.shown || standsAlone(state.place) ? state.place : 'start'))
  const [openKeys, keyMap] = useFetchedDialog(fetchKeyMap, noKeyMap)
  const [openFind, finder] = useFetchedDialog(fetchFinder, noFinder)
  const [openUndoList, undoMenu] = useFetchedDialog(fetchUndoMenu, noUndoMenu)
  const main = useRef<HTMLElement>(null)
  const whole = useRef<HTMLDivElement>(null)
  useFileDrop(onDropFiles)
  useTheme()
  useDocumentTitle()
  useFocusOnArrival(place, main)
  useKeptFocus(whole)

  const tools = useMemo(() => ({ openKeys, openFind, openUndoList }), [openKeys, openFind, openUndoList])

  return (
    <ActionBoardProvider>
      <ShellToolsContext.Provider value={tools}>
        <ShellActions />
        <div className="app" ref={whole}>
          {/* The leading screen covers all of this: there is nothing to tab into by mistake. */}
          {place !== 'lead' && (
            <>
              {/* A button and no link: the fragment of the address is spoken for. */}
              <Button className="app-skip" onClick={() => main.current?.focus()}>
                {words.app.skip}
              </Button>
              <Header />
              <ReceivedBar />
              <ReadOnBar />
              <Notices />
            </>
          )}
          <main ref={main} className="app-main" tabIndex={-1}>
            <ErrorBoundary
              key={place}
              onDownload={() => downloadRide(store)}
              onReload={onReload}
              onLeave={() => store.getState().setPlace('start')}
            >
              <Suspense fallback={<p className="app-waiting">{words.app.opening}</p>}>
                {place === 'start' && (
                  <StartPlace
                    now={now}
                    readPlaylist={readSongList}
                    onOpenFile={onOpenFile}
                    onOpenLink={onOpenLink}
                    backup={<BackupPart today={() => isoDay(now())} onOpenFile={onOpenFile} />}
                  />
                )}
                {place === 'draft' && <DraftPlace />}
                {place === 'sheet' && <SheetPlace today={dayWords(now())} day={isoDay(now())} makeExport={makeExportAt(now)} />}
                {place === 'setup' && <SetupPlace />}
                {place === 'lead' && <LeadPlace clock={leadClock} onTakeOver={onTakeOver} />}
                {place === 'handover' && (
                  <HandOverPlace page={location.href} onOpenFile={onOpenFile} qrOf={qrOf} versions={<VersionsPart />} />
                )}
                {place === 'songs' && <SongsPlace readList={readSongList} />}
                {place === 'log' && <LogPlace now={now} writeTable={writeTable} />}
                {place === 'merge' && <MergePlace />}
              </Suspense>
            </ErrorBoundary>
            {/* Of a landmark, as every menu is. */}
            {undoMenu}
          </main>
          <RestoreDialog />
          <NewFromRide />
          {finder}
          {keyMap}
          <Announcements />
        </div>
      </ShellToolsContext.Provider>
    </ActionBoardProvider>
  )
}

/** The writers of other programs' files are fetched when the first file is asked for. */
const makeExportAt =
  (now: () => number): MakeExport =>
  async (id, ride, report, day) =>
    (await import('./exports/exportFile.ts')).exportFile(id, ride, report, { ...day, now: now(), today: dayWords(now()) })

/** A table as CSV. */
const writeTable: WriteTable = async (rows) => (await import('#formats/csv/writeCsv.ts')).writeCsv(rows)

/** "November 25, 2026" */
const dayWords = (instant: number): string => moment(instant, { dateStyle: 'long' })

/** What can be done in every place. */
function ShellActions() {
  const on = useShellGround()
  usePlaceActions(FINDING, () => on)
  usePlaceActions(EVERYWHERE, () => on)
  return null
}

function Announcements() {
  const message = useApp((state) => state.announcement)
  const turn = useApp((state) => state.announcementTurn)
  return <LiveRegion message={message} turn={turn} />
}

function useTheme() {
  const theme = useApp((state) => state.theme)
  // Before the first paint, so that a dark page is not white for a moment.
  useLayoutEffect(() => {
    if (theme === 'auto') delete document.documentElement.dataset.theme
    else document.documentElement.dataset.theme = theme
  }, [theme])
}

/** The title the page came with. */
const PAGE_TITLE = document.title

function useDocumentTitle() {
  const title = useApp((state) => (state.shown && state.place !== 'start' ? state.shown.title || words.names.untitled : null))
  useEffect(() => {
    document.title = title === null ? PAGE_TITLE : `${title} · ${PAGE_TITLE}`
  }, [title])
}

/** Moves the focus into the page on going to another place, as a page load would; not on the first. */
function useFocusOnArrival(place: Place, main: { readonly current: HTMLElement | null }) {
  const before = useRef(place)
  useEffect(() => {
    if (before.current === place) return
    before.current = place
    main.current?.focus({ preventScroll: true })
    window.scrollTo(0, 0)
  }, [place, main])
}
