import { useApp } from '#store/useApp.ts'

/** What the browser has promised for the rides kept in it, in plain words. */
export function KeepingNote() {
  const keeping = useApp((state) => state.keeping)
  if (keeping === null) return null
  return (
    <p className="start-hint">
      {keeping === 'promised'
        ? 'This browser keeps them until you clear this site’s data yourself. A backup survives that too.'
        : 'This browser may clear them by itself when the disk is nearly full, or when this page has not been opened for weeks. Keep a backup as a file.'}
    </p>
  )
}
