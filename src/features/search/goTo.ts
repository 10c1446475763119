import type { Spot } from '#plan/search/things.ts'
import type { Sought } from '#store/searchSlice.ts'
import type { AppStore } from '#store/state.ts'

/** Opens a saved ride, and shows a place in it; the ride that is open stays as it is, with its way back. */
export async function goToRide(store: AppStore, id: string, spot?: Spot): Promise<void> {
  const { ride, received, setPlace, openSaved, seek } = store.getState()
  if (ride?.id === id && !received) setPlace('draft')
  else if (!(await openSaved(id))) return
  if (spot) seek({ kind: 'spot', spot })
}

/** Goes to the place of the page that has it, which then shows it. */
export function goTo(store: AppStore, sought: Sought): void {
  const { setPlace, showSetupPart, seek } = store.getState()
  if (sought.kind === 'spot' || sought.kind === 'finding') setPlace('draft')
  if (sought.kind === 'song') setPlace('songs')
  if (sought.kind === 'caution') setPlace('start')
  if (sought.kind === 'rule') {
    showSetupPart('rules')
    setPlace('setup')
  }
  seek(sought)
}
