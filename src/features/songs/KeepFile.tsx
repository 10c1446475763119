import { useKeptFile } from '#store/useKeptFile.ts'
import { words } from '#words/words.ts'

/** Whether a song's file stays on this device; shown where the file is at hand or kept. */
export function KeepFile({ fingerprint }: { fingerprint: string }) {
  const { size, kept, keep } = useKeptFile(fingerprint)
  if (size === null) return <p className="shelf-quiet">{words.songs.noFile}</p>
  return (
    <label className="shelf-check">
      <input type="checkbox" checked={kept} onChange={(event) => void keep(event.currentTarget.checked)} />
      {words.songs.saveFile({ size })}
    </label>
  )
}
