import { createContext, useContext } from 'react'
import type { Ground } from '#actions/action.ts'
import type { Offer } from '#features/drafting/proposals/useOffer.ts'
import { findBlock } from '#plan/places.ts'
import type { AppState, AppStore } from '#store/state.ts'
import { useApp, useAppStore } from '#store/useApp.ts'

/** What an action is about: where the focus is on the stage, else what is selected. */
export type Target =
  | { kind: 'ride' }
  | { kind: 'section'; id: string }
  /** Of several that are selected, `id` is the one chosen last. */
  | { kind: 'block' | 'set' | 'several'; id: string; ids: readonly string[] }

/** A menu of what can be done to a stop of the stage, or for null to what is selected. */
export interface AskedMenu {
  stop: HTMLElement | null
  /** What it opens beside: an element, or a point of the window. */
  at: EventTarget | { x: number; y: number } | null
  /** Everything, or only what is pasted in part. */
  which: 'all' | 'paste'
}

/** What the place can do besides changing the ride. */
export interface DraftTools {
  /** Moves the focus to the stage's stop for this id, wherever it stands after the change, and brings it into sight. */
  focus: (id: string) => void
  /** Brings it into sight and leaves the focus where it is. */
  reveal: (id: string) => void
  /** Goes to the first field of the details. */
  openDetails: () => void
  /** Goes to the words of the first cue in the details, or to where one is written. */
  openCues: () => void
  /** Goes to the next part of the place, or the one before: stage, details, tray, checks. */
  goToRegion: (step: 1 | -1) => void
  /** Opens a line to type a block in: a new one after the selection, or this one. */
  typeLine: (blockId: string | null) => void
  /** Turns the name of something on the stage into a field, on this stop or on any of its own. */
  rename: (id: string, stop: HTMLElement | null) => void
  /** Opens the line in which the cues of this block are written, at one of them if told. */
  writeCue: (blockId: string, cueId?: string | null) => void
  fitRide: () => void
  fitSection: (sectionId: string) => void
  zoomBy: (factor: number) => void
  /** Offers something for the whole ride; asked for again, it is left. */
  makeOffer: (offer: Offer) => void
  offer: Offer | null
  /** Asks under which name to keep blocks, sets or a song's blocks as a pattern. */
  keepPattern: (ids: readonly string[]) => void
  /** Says what there is to say of a change besides what it shows. */
  note: (note: string | null) => void
  openMenu: (asked: AskedMenu) => void
}

/** What the actions of the draft are done on. */
export interface DraftGround extends Ground {
  tools: DraftTools
  target: Target
  /** The element of the stage that has the focus; null for what is selected. */
  stop: HTMLElement | null
}

const nothing = () => {}

/** Where there is no stage. */
const NO_TOOLS: DraftTools = {
  focus: nothing,
  reveal: nothing,
  openDetails: nothing,
  openCues: nothing,
  goToRegion: nothing,
  typeLine: nothing,
  rename: nothing,
  writeCue: nothing,
  fitRide: nothing,
  fitSection: nothing,
  zoomBy: nothing,
  makeOffer: nothing,
  offer: null,
  keepPattern: nothing,
  note: nothing,
  openMenu: nothing,
}

export const DraftToolsContext = createContext<DraftTools>(NO_TOOLS)

/** The ground for buttons: about what is selected. */
export function useSelectedGround(): DraftGround {
  const store = useAppStore()
  const tools = useContext(DraftToolsContext)
  useApp((state) => state.selection)
  return selectedGround(store, tools)
}

export const selectedGround = (store: AppStore, tools: DraftTools): DraftGround => ({
  store,
  tools,
  target: targetOf(store.getState()),
  stop: null,
})

/** The ground for keys: about the stop under the focus (a block, a set’s bracket, a song’s head); null away from the stage. */
export function focusedGround(store: AppStore, tools: DraftTools, focus: Element): DraftGround | null {
  const stop = focus.closest<HTMLElement>('[data-stage-stop]')
  const id = stop?.dataset.id
  if (!stop || !id) return null
  const kind = stop.dataset.stageStop as 'block' | 'set' | 'section'
  if (kind === 'section') return { store, tools, stop, target: { kind, id } }
  const { ids } = store.getState().selection
  return { store, tools, stop, target: { kind, id, ids: ids.includes(id) ? ids : [id] } }
}

function targetOf({ selection: { ids, sectionId }, shown }: AppState): Target {
  const id = ids.at(-1)
  if (id !== undefined) return { kind: ids.length > 1 ? 'several' : shown && findBlock(shown, id) ? 'block' : 'set', id, ids }
  return sectionId === null ? { kind: 'ride' } : { kind: 'section', id: sectionId }
}
