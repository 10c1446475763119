import { useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { useApp, useAppStore } from '#store/useApp.ts'
import { FileButton } from '#ui/FileButton.tsx'
import { plural } from '#units/plural.ts'
import { BACKUP, SAVE_BACKUP } from './actions/saveBackup.ts'
import './backup.css'

interface Props {
  /** The day by the clock on this machine, "2026-11-25". */
  today: () => string
  onOpenFile: (file: File) => void
}

/** Everything that is kept on this machine as one file, and the way back. */
export function BackupPart({ today, onOpenFile }: Props) {
  const store = useAppStore()
  const [told, setTold] = useState('')
  const files = useApp((state) => state.keptSoundFiles.size)
  const on = { store, today, tell: setTold }
  usePlaceActions(BACKUP, () => on)
  return (
    <section className="backup" aria-labelledby="backup-head">
      <h2 id="backup-head">a backup of everything</h2>
      <p>
        All rides with their private notes, all versions, bikes, riders and house rules, songs, your own form points, and the log, as one
        file. Putting one back first says what it would change here.
      </p>
      {files > 0 && (
        <p>
          Not in it: {plural(files, 'sound file')} you keep here. Have {files === 1 ? 'it' : 'them'} elsewhere as well; dropped on the page,
          each finds its song again, also on another machine.
        </p>
      )}
      <div className="backup-actions">
        <ActionButton action={SAVE_BACKUP} on={on} />
        <FileButton accept=".json,application/json" onFile={onOpenFile}>
          put a backup back…
        </FileButton>
      </div>
      <p role="status">{told}</p>
    </section>
  )
}
