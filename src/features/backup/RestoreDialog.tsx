import type { BackupEntry } from '#plan/kept/compareBackup.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import type { Restoring } from '#store/backupSlice.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Dialog } from '#ui/Dialog.tsx'
import { tell, words } from '#words/words.ts'
import './backup.css'

/** What differing settings are replaced by is not kept; a ride's state is. */
function stateWords({ kind, state }: BackupEntry): string {
  const { isNew, isNewer, isOlder, isOther, isOtherRide, isSame } = words.backup
  const other = kind === 'ride' ? isOtherRide : isOther
  return { new: isNew, newer: isNewer, older: isOlder, different: other, same: isSame }[state]
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
      title={words.backup.dialog}
      closeLabel={words.backup.leave}
      onClose={cancel}
      wide
      actions={
        <Button tone="solid" disabled={count === 0} onClick={() => void restore()}>
          {count === 0 ? words.backup.nothingToRestore : words.backup.restoreCount({ count })}
        </Button>
      }
    >
      {restoring && <Entries restoring={restoring} />}
    </Dialog>
  )
}

const KINDS = ['ride', 'version', 'profile', 'class', 'song'] as const

function Entries({ restoring: { name, backup, entries, taken, unreadable } }: { restoring: Restoring }) {
  const take = useApp((state) => state.takeEntry)
  const same = entries.filter(({ state }) => state === 'same').length
  return (
    <div className="backup-entries">
      <p>{words.backup.contents({ file: name, entries: entries.length, same })}</p>
      <SoundFiles songs={backup.songs ?? []} />
      {unreadable > 0 && <p>{words.backup.unreadable({ count: unreadable })}</p>}
      {KINDS.map((kind) => {
        const title = words.backup.kind({ kind })
        const rows = entries.filter((entry) => entry.kind === kind && entry.state !== 'same')
        if (rows.length === 0) return null
        return (
          <section key={kind} aria-label={title}>
            <h3>{title}</h3>
            {rows.map((entry) => (
              <label key={entry.key} className="backup-entry">
                <input type="checkbox" checked={taken.has(entry.key)} onChange={(event) => take(entry.key, event.target.checked)} />
                <span>
                  <b>{tell(entry.title)}</b> <span className="backup-state">{stateWords(entry)}</span>
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
  return <p>{words.backup.soundFilesMissing({ count: missing })}</p>
}
