import { useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { useApp, useAppStore } from '#store/useApp.ts'
import { FileButton } from '#ui/FileButton.tsx'
import { words } from '#words/words.ts'
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
      <h2 id="backup-head">{words.backup.title}</h2>
      <p>{words.backup.about}</p>
      {files > 0 && <p>{words.backup.soundFilesNotIn({ count: files })}</p>}
      <div className="backup-actions">
        <ActionButton action={SAVE_BACKUP} on={on} />
        <FileButton accept=".json,application/json" onFile={onOpenFile}>
          {words.backup.restore}
        </FileButton>
      </div>
      <p role="status">{told}</p>
    </section>
  )
}
