import { type ReactNode, useEffect, useState } from 'react'
import { blankRide } from '#plan/newRide.ts'
import { sectionsFromPlaylist } from '#plan/songs/sectionsFromPlaylist.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { FileButton } from '#ui/FileButton.tsx'
import { language, words } from '#words/words.ts'
import { DemoRides } from './DemoRides.tsx'
import { KeepingNote } from './KeepingNote.tsx'
import { LinkField } from './LinkField.tsx'
import { NewRide, type NewRideChoice } from './NewRide.tsx'
import type { ReadPlaylist } from './readPlaylist.ts'
import { SafetyNotes } from './SafetyNotes.tsx'
import { SavedRides } from './SavedRides.tsx'
import './rides.css'
import './start.css'

interface Props {
  /** Milliseconds since 1970. */
  now: () => number
  readPlaylist: ReadPlaylist
  onOpenFile: (file: File) => void
  /** Opens the link in a text as its address would. */
  onOpenLink: (text: string) => void
  /** The backup of everything, in the second column. */
  backup?: ReactNode
}

/** Where everyone begins: the rides on this device, two to look at, and the ways to a new one. */
export function StartPlace({ now, readPlaylist, onOpenFile, onOpenLink, backup }: Props) {
  const store = useAppStore()
  const saved = useApp((state) => state.savedRides)
  const [arrived] = useState(now)
  useEffect(() => void store.getState().refreshSavedRides(), [store])

  const create = ({ songs, ...choice }: NewRideChoice) => {
    const { newId, openRide } = store.getState()
    const ride = blankRide({ newId, language, ...choice })
    openRide(songs.length === 0 ? ride : { ...ride, sections: sectionsFromPlaylist(songs, newId) })
  }
  const open = (id: string) => {
    const { ride, received, setPlace, openSaved } = store.getState()
    // Opening it anew would end the way back of its changes.
    if (ride?.id === id && !received) setPlace('draft')
    else void openSaved(id)
  }

  return (
    <div className="start">
      <h1>{words.start.heading}</h1>
      <p className="start-lede">{words.start.lede}</p>
      <div className="start-columns">
        <div className="start-column">
          {saved.length > 0 && (
            <section aria-labelledby="start-saved">
              <h2 id="start-saved">{words.start.yourRides}</h2>
              <SavedRides
                rides={saved}
                now={arrived}
                onOpen={open}
                onStartFrom={store.getState().askTemplate}
                onDelete={(id) => void store.getState().removeSaved(id)}
              />
              <KeepingNote />
            </section>
          )}
          <section aria-labelledby="start-demos">
            <h2 id="start-demos">{words.start.sampleRides}</h2>
            <DemoRides onOpen={(ride) => store.getState().openDemo(ride)} />
          </section>
        </div>
        <div className="start-column">
          <section aria-labelledby="start-new">
            <h2 id="start-new">{words.start.newRide}</h2>
            <NewRide readPlaylist={readPlaylist} onCreate={create} onOpenLink={onOpenLink} />
          </section>
          <section aria-labelledby="start-link">
            <h2 id="start-link">{words.start.openLink}</h2>
            <LinkField onOpenLink={onOpenLink} onOpenFile={onOpenFile} />
          </section>
          <section aria-labelledby="start-file">
            <h2 id="start-file">{words.start.openFile}</h2>
            <div className="start-file">
              <FileButton accept=".json,application/json" onFile={onOpenFile}>
                {words.start.chooseFile}
              </FileButton>
              <span className="start-hint">{words.start.orDrop}</span>
            </div>
          </section>
          {backup}
        </div>
      </div>
      <SafetyNotes />
    </div>
  )
}
