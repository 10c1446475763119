import { shareable } from '#plan/link/shareable.ts'
import type { Ride } from '#plan/model.ts'
import { Button } from '#ui/Button.tsx'
import { FileButton } from '#ui/FileButton.tsx'
import { saveTextFile } from '#ui/saveTextFile.ts'
import { fileName } from './fileName.ts'

interface Props {
  ride: Ride
  onOpenFile: (file: File) => void
  onAnnounce: (sentence: string) => void
  /** The file left this page. */
  onSent: () => void
}

/** The same ride as a file to attach, and the way in for a file someone sent. */
export function FilePart({ ride, onOpenFile, onAnnounce, onSent }: Props) {
  const name = fileName(ride.title)
  const save = () => {
    saveTextFile(name, `${JSON.stringify(shareable(ride), null, 2)}\n`)
    onAnnounce(`Saved ${name}`)
    onSent()
  }
  return (
    <section className="handover-part" aria-labelledby="handover-file">
      <h2 id="handover-file">a file</h2>
      <p>Holds the same as the link, at any length. The receiver opens it from the start page, or drops it on the page.</p>
      <div className="handover-actions">
        <Button tone="action" onClick={save}>
          save as file
        </Button>
        <FileButton accept=".json,application/json" onFile={onOpenFile}>
          open a file…
        </FileButton>
        <span className="handover-hint">{name}</span>
      </div>
    </section>
  )
}
