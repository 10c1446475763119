import { CheckRow } from '#features/drafting/panel/rows/CheckRow.tsx'
import { useKeptFile } from '#store/useKeptFile.ts'
import { words } from '#words/words.ts'

/** Whether the file of a section's song stays on this device; shown where the file is at hand or kept. */
export function KeepSongFile({ fingerprint }: { fingerprint: string }) {
  const { size, kept, keep } = useKeptFile(fingerprint)
  if (size === null) return null
  return (
    <CheckRow
      label={words.panelsSong.file}
      says={words.panelsSong.keepFile({ size })}
      checked={kept}
      onChange={(wanted) => void keep(wanted)}
    />
  )
}
