import type { BackupEntry, EntryState } from '#plan/kept/compareBackup.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import type { Restoring } from '#store/backupSlice.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Dialog } from '#ui/Dialog.tsx'
import { plural } from '#units/plural.ts'
import './backup.css'

const STATES: Record<EntryState, string> = {
  new: 'not here yet',
  newer: 'newer than yours; yours stays as a version',
  older: 'older than yours; yours would stay as a version',
  different: 'differs from yours',
  same: 'the same as yours',
}

/** What differing settings are replaced by is not kept; a ride's state is. */
const words = ({ kind, state }: BackupEntry): string => {
  if (state !== 'different') return STATES[state]
  return kind === 'ride' ? `${STATES.different}; yours would stay as a version` : `${STATES.different}; yours would be replaced`
}

/** Says what a backup would change, and changes it only when told to. */
export function RestoreDialog() {
  const restoring = useApp((state) => state.restoring)
  const restore = useApp((state) => state.restoreBackup)
  const cancel = useApp((state) => state.cancelBackup)
  const count = restoring?.taken.size ?? 0
  return (
    <Dialog
      open={restoring !== null}
      title="put a backup back"
      closeLabel="leave everything as it is"
      onClose={cancel}
      wide
      actions={
        <Button tone="solid" disabled={count === 0} onClick={() => void restore()}>
          {count === 0 ? 'nothing to put back' : `put back ${count}`}
        </Button>
      }
    >
      {restoring && <Entries restoring={restoring} />}
    </Dialog>
  )
}

function Entries({ restoring: { name, backup, entries, taken, unreadable } }: { restoring: Restoring }) {
  const take = useApp((state) => state.takeEntry)
  const same = entries.filter(({ state }) => state === 'same').length
  const kinds = [
    ['ride', 'rides'],
    ['version', 'versions'],
    ['profile', 'bikes, riders and house rules'],
    ['class', 'classes taught'],
    ['song', 'songs'],
  ] as const
  return (
    <div className="backup-entries">
      <p>
        “{name}” holds {plural(entries.length, 'entry', 'entries')}
        {same > 0 && `, ${same} of them the same as here`}. Nothing is deleted by putting it back.
      </p>
      <SoundFiles songs={backup.songs ?? []} />
      {unreadable > 0 && <p>{unreadable} more cannot be read and are left out.</p>}
      {kinds.map(([kind, title]) => {
        const rows = entries.filter((entry) => entry.kind === kind && entry.state !== 'same')
        if (rows.length === 0) return null
        return (
          <section key={kind} aria-label={title}>
            <h3>{title}</h3>
            {rows.map((entry) => (
              <label key={entry.key} className="backup-entry">
                <input type="checkbox" checked={taken.has(entry.key)} onChange={(event) => take(entry.key, event.target.checked)} />
                <span>
                  <b>{entry.title}</b> <span className="backup-state">{words(entry)}</span>
                </span>
              </label>
            ))}
          </section>
        )
      })}
    </div>
  )
}

/** A backup holds no sound: what it knows by ear of a file is all there is of it until the file is dropped again. */
function SoundFiles({ songs }: { songs: readonly ShelfSong[] }) {
  const missing = useApp(
    (state) =>
      songs.filter(({ song: { fingerprint: print } }) => print && !state.keptSoundFiles.has(print) && !state.soundFiles.has(print)).length,
  )
  if (missing === 0) return null
  return (
    <p>
      The sound files of {plural(missing, 'song')} are not here, and a backup holds none: drop them on the page and each finds its song.
      Tempo, beats and marks are in it.
    </p>
  )
}
