import { CheckRow } from '#features/drafting/panel/rows/CheckRow.tsx'
import { useKeptFile } from '#store/useKeptFile.ts'
import { formatBytes } from '#units/formatBytes.ts'

/** Whether the file of a section's song stays on this machine; shown where the file is at hand or kept. */
export function KeepSongFile({ fingerprint }: { fingerprint: string }) {
  const { size, kept, keep } = useKeptFile(fingerprint)
  if (size === null) return null
  return (
    <CheckRow
      label="file"
      says={`keep it on this machine (${formatBytes(size)})`}
      checked={kept}
      onChange={(wanted) => void keep(wanted)}
    />
  )
}
