import { createRoot } from 'react-dom/client'
import { browserSound } from '#audio/browserSound.ts'
import { browserVoice } from '#audio/browserVoice.ts'
import { createSongAnalyser } from '#audio/songAnalyser.ts'
import { demoRide } from '#features/start/useDemoRides.ts'
import { openStorage } from '#storage/openStorage.ts'
import { openProfileStorage } from '#storage/profileStorage.ts'
import { openSongStorage } from '#storage/songStorage.ts'
import { openSoundStorage } from '#storage/soundStorage.ts'
import { openTaughtStorage } from '#storage/taughtStorage.ts'
import { openVersionStorage } from '#storage/versionStorage.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { Ports } from '#store/ports.ts'
import { AppStoreProvider } from '#store/useApp.ts'
import { tell } from '#words/words.ts'
import { App } from './App.tsx'
import { openLink, tieAddress } from './addressSync.ts'
import { remindOfBackups } from './backupReminder.ts'
import { backToClass, keepClass, readClass } from './classKeeping.ts'
import { createIds } from './createIds.ts'
import { DraftScopes } from './DraftScopes.tsx'
import { downloadRide } from './downloadRide.ts'
import { backToDraft, createDraftKeeper, takeLeftDrafts, takeWordsOnLeaving } from './draftKeeper.ts'
import { ErrorBoundary } from './ErrorBoundary.tsx'
import { fragmentOfAddress } from './fragment.ts'
import { keepJournal } from './journal.ts'
import { askForKeeping } from './keepingPromise.ts'
import { keepHabits } from './keptHabits.ts'
import { fetchWords, languageHere } from './keptLanguage.ts'
import { keepReadOn } from './keptReadOn.ts'
import { keepRehearsing } from './keptRehearsing.ts'
import { LanguageScope } from './LanguageScope.tsx'
import { keepSession, readSession, SESSION_NOTE } from './lastSession.ts'
import { createLeadClock } from './leadClock.ts'
import { browserLead, shareLead } from './leadWindows.ts'
import { askOnLeaving, noteOnLeaving, saveNoted } from './leavingNotes.ts'
import { openRideFile } from './openRideFile.ts'
import { openWindows, showOpen } from './openWindows.ts'
import { registerServiceWorker } from './registerServiceWorker.ts'
import { reopen } from './reopen.ts'
import { browserWorld, startSaving } from './saving.ts'
import { shareProfiles } from './sharedProfiles.ts'
import { takeFiles } from './takeFiles.ts'
import '#ui/base.css'

/** Milliseconds after the start at which second copies that are missing are made again. */
const MEND_AFTER = 3000

/** Puts the real clock, ids, storage and address bar together with the store, and draws the page into `root`. */
export async function start(root: HTMLElement): Promise<void> {
  registerServiceWorker()
  const notes = localNotes()
  const [storage, profiles, versions, taught, songs, sounds] = await Promise.all([
    openStorage(),
    openProfileStorage(),
    openVersionStorage(),
    openTaughtStorage(),
    openSongStorage(),
    openSoundStorage(),
    fetchWords(languageHere(notes, navigator.languages), navigator.languages),
  ])
  const shelf = storage.warning === null ? storage : null
  const shared = shareProfiles()
  const store = createAppStore({
    newId: createIds((bytes) => crypto.getRandomValues(bytes)),
    now: Date.now,
    shelf,
    demoRide,
    profiles: profiles && shared.telling(profiles),
    versions,
    taught,
    songs,
    sounds,
    hearSong: createSongAnalyser(browserSound).hear,
    openPlayer: typeof AudioContext === 'undefined' ? null : openPlayer,
    voice: browserVoice(),
  })
  void store.getState().refreshProfiles()
  shared.onChanged(() => void store.getState().refreshProfiles())
  void store.getState().refreshSongs()
  void store.getState().refreshSoundFiles()
  const windowId = store.getState().newId()
  showOpen(windowId)
  takeWordsOnLeaving(window)

  if (shelf) {
    await saveNoted(notes, storage, storage)
    if (notes) noteOnLeaving(store, notes, Date.now, browserWorld)
    startSaving(store, storage)
    askForKeeping(store, navigator.storage, notes)
    remindOfBackups(store, notes, Date.now)
    keepJournal(store, storage, windowId, { ...browserWorld, now: Date.now })
  } else {
    store.getState().setSaved('failed')
    store.getState().notify({ kind: 'warning', sentence: tell(storage.warning!) })
  }
  askOnLeaving(store, window)
  const asked = fragmentOfAddress(location)
  // A link that stood in path or query goes on as a fragment, and is not left where servers see it.
  if (asked !== location.hash) history.replaceState(null, '', './')
  const [session] = await storage.notesUnder(SESSION_NOTE)
  await reopen(store, asked, readSession(notes, session?.text), storage.lastOpened)
  const left = await readClass(notes, storage)
  if (left) backToClass(store, left)
  const words = await takeLeftDrafts(notes, storage, await openWindows())
  const draftKeeper = createDraftKeeper(store, words, { ...browserWorld, notes, pad: storage, window: windowId })
  backToDraft(store, words)
  keepClass(store, notes, storage, Date.now)
  const takeOver = await shareLead(store, browserLead())
  tieAddress(store, window)
  keepSession(store, notes, browserWorld, storage)
  keepReadOn(store, notes)
  keepHabits(store, notes)
  keepRehearsing(store, notes)

  const openFile = (file: File) => openRideFile(file, store, shelf)
  setTimeout(() => void storage.mend(), MEND_AFTER)
  createRoot(root).render(
    <AppStoreProvider value={store}>
      {/* The places have a boundary of their own; this one stands behind the shell itself. */}
      <ErrorBoundary onDownload={() => downloadRide(store)} onReload={reload} onLeave={reload}>
        <DraftScopes keeper={draftKeeper}>
          <LanguageScope notes={notes}>
            <App
              now={Date.now}
              leadClock={createLeadClock()}
              onTakeOver={() => void takeOver()}
              onReload={reload}
              onOpenFile={(file) => void openFile(file)}
              onOpenLink={(text) => openLink(text, store)}
              onDropFiles={(files) => void takeFiles(files, store, openFile)}
            />
          </LanguageScope>{' '}
        </DraftScopes>
      </ErrorBoundary>
    </AppStoreProvider>,
  )
}

/** What plays is fetched when somebody first wants to hear something. */
const openPlayer: NonNullable<Ports['openPlayer']> = async (fileOf, events) => {
  const [{ createPlayer }, { browserPlaying }] = await Promise.all([import('#audio/player.ts'), import('#audio/browserPlaying.ts')])
  return createPlayer(browserPlaying, fileOf, events)
}

const reload = () => location.reload()

/** localStorage, or null where asking for it alone is refused. */
function localNotes(): Storage | null {
  try {
    return window.localStorage
  } catch {
    return null
  }
}
