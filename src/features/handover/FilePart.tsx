import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import type { Ride } from '#plan/model.ts'
import { useAppStore } from '#store/useApp.ts'
import { FileButton } from '#ui/FileButton.tsx'
import { words } from '#words/words.ts'
import { FILE, SAVE_FILE } from './actions/send.ts'
import { fileName } from './fileName.ts'

interface Props {
  ride: Ride
  onOpenFile: (file: File) => void
  /** The file left this page. */
  onSent: () => void
}

/** The same ride as a file to attach, and the way in for a file someone sent. */
export function FilePart({ ride, onOpenFile, onSent }: Props) {
  const name = fileName(ride.title)
  const on = { store: useAppStore(), onSent }
  usePlaceActions(FILE, () => on)
  return (
    <section className="handover-part" aria-labelledby="handover-file">
      <h2 id="handover-file">{words.handover.file}</h2>
      <p>{words.handover.fileAbout}</p>
      <div className="handover-actions">
        <ActionButton action={SAVE_FILE} on={on} tone="action" />
        <FileButton accept=".json,application/json" onFile={onOpenFile}>
          {words.handover.openFile}
        </FileButton>
        <span className="handover-hint">{name}</span>
      </div>
    </section>
  )
}
