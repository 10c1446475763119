import { useKeptFile } from '#store/useKeptFile.ts'
import { formatBytes } from '#units/formatBytes.ts'

/** Whether a song's file stays on this machine; shown where the file is at hand or kept. */
export function KeepFile({ fingerprint }: { fingerprint: string }) {
  const { size, kept, keep } = useKeptFile(fingerprint)
  if (size === null) return <p className="shelf-quiet">Its file is not at hand. Drop it here again to hear it or to keep it.</p>
  return (
    <label className="shelf-check">
      <input type="checkbox" checked={kept} onChange={(event) => void keep(event.currentTarget.checked)} />
      keep its file on this machine ({formatBytes(size)})
    </label>
  )
}
