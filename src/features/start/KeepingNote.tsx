import { useApp } from '#store/useApp.ts'
import { words } from '#words/words.ts'

/** What the browser has promised for the rides kept in it, in plain words. */
export function KeepingNote() {
  const keeping = useApp((state) => state.keeping)
  if (keeping === null) return null
  return <p className="start-hint">{keeping === 'promised' ? words.start.keptForSure : words.start.keptPerhaps}</p>
}
