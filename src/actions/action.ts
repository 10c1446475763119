import { isReadOnly } from '#store/placeSlice.ts'
import type { AppStore } from '#store/state.ts'
import { say, type Text } from '#words/said.ts'
import { ariaChord, type Chord, chordWords } from './keys/chord.ts'

/** What every action is done on: the page's state; a place adds what only it can reach. */
export interface Ground {
  store: AppStore
}

/** A press of a key or a button. */
export interface Press {
  /** When it was made, on the clock of the page's events; not when there was time for it. */
  timeStamp: number
  /** What was pressed, for a button. */
  currentTarget?: EventTarget | null
}

/** True; a text that says why not; or false where it is about something that is not there, and nobody has to be told. */
export type Possible = boolean | Text

/** Something a person can do. Keys, the key map, and buttons are made of it. Its texts are named, and told where they are drawn. */
export interface Action<On extends Ground> {
  /** The only one of its kind: "stage.split". */
  id: string
  /** What it is called, also where it stands among all others. */
  name: Text
  /** What stands on its button where that changes or is shorter; else its name. */
  words?: (on: On) => Text
  /** What it does, for the key map and behind its button. Neighbours that say the same share a row of the map. */
  does: Text
  /** What there is to say behind its button instead. */
  tells?: (on: On) => Text | undefined
  keys?: readonly Chord[]
  /** Keys that have no meaning for it at times. */
  hears?: (on: On, chord: Chord) => boolean
  /** Whether it can be done now. */
  can?: (on: On) => Possible
  /** Whether what it switches is on. */
  pressed?: (on: On) => boolean | undefined
  /** It changes the ride, so it needs one that may be changed. */
  writes?: true
  /** It has no button: a pointer does the same in its own way. */
  keyOnly?: true
  /** It stands in the menu at the pointer, where it means anything. */
  inMenu?: true
  /** The browser makes an event of its own of its keys, as of a copy: they are left to it. */
  byBrowser?: true
  do: (on: On, press: Press) => void
}

/** Keys of a field or a drag, for the key map. */
export interface KeyRow {
  keys: readonly string[]
  does: Text
}

/** Actions under one heading of the key map, and the keys of fields and drags that stand by themselves. */
interface ActionGroup<On extends Ground> {
  title: Text
  actions: readonly Action<On>[]
  also?: readonly KeyRow[]
}

/** Actions that hold together. */
export interface ActionPlace<On extends Ground> {
  id: string
  /** Whose keys come first: those about what has the focus, those of what is on the page, those that hold everywhere. */
  reach: 'focus' | 'page' | 'everywhere'
  /** A key that is held down does it again and again. */
  repeats: boolean
  /** Its keys hold in a text field too, once the field has no use for them. */
  inFields?: true
  groups: readonly ActionGroup<On>[]
}

/** Why a ride from elsewhere stays as it is. */
export const READ_ONLY = say('actions.readOnly')

/** Whether an action can be done now. */
export function possible<On extends Ground>(action: Action<On>, on: On): Possible {
  if (action.writes && isReadOnly(on.store.getState())) return READ_ONLY
  return action.can?.(on) ?? true
}

/** Its keys as they stand on the screen. */
export const keyWords = ({ keys = [] }: { keys?: readonly string[] }): string[] => keys.flatMap(chordWords)

/** The keys of actions for `aria-keyshortcuts`; undefined where they have none. */
export const ariaKeys = (...actions: readonly { keys?: readonly Chord[] }[]): string | undefined =>
  actions.flatMap(({ keys = [] }) => keys.map(ariaChord)).join(' ') || undefined
