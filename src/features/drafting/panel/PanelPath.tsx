import { sectionName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { tell, words } from '#words/words.ts'
import './PanelPath.css'

/** The way out from what is chosen: to the ride it is in, and to its song. Nothing where the ride itself is shown. */
export function PanelPath() {
  const store = useAppStore()
  const { ids, sectionId } = useApp((state) => state.selection)
  const song = useApp((state) => {
    const section = state.shown && sectionId !== null ? findSection(state.shown, sectionId) : undefined
    return section && tell(sectionName(state.shown!, section))
  })
  if (sectionId === null) return null
  return (
    <nav className="panel-path" aria-label={words.panels.detailsOf}>
      <button type="button" className="panel-path-step" title={words.panels.rideDetails} onClick={() => store.getState().clearSelection()}>
        {words.panels.ride}
      </button>
      {ids.length > 0 && (
        <button type="button" className="panel-path-step panel-path-song" onClick={() => store.getState().selectSection(sectionId)}>
          {song}
        </button>
      )}
    </nav>
  )
}
