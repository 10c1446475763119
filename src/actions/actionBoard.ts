import { isTyping } from '#ui/isTyping.ts'
import type { Text } from '#words/said.ts'
import { type Action, type ActionPlace, type Ground, keyWords, type Possible, type Press, possible } from './action.ts'
import { fitOf, type KeyPress } from './keys/chord.ts'

/** Where actions are done from: the element that has the focus, or null for what is selected. */
export type Focus = Element | null

/** An action together with what it would be done on. */
export interface BoundAction {
  id: string
  name: Text
  does: Text
  /** What stands on its button. */
  words: Text
  /** Its keys as they stand on the screen. */
  keys: readonly string[]
  keyOnly: boolean
  /** The heading it stands under. */
  group: Text
  inMenu: boolean
  place: ActionPlace<never>
  /** Whether it can be done now. */
  possible: () => Possible
  /** How well a key press fits it. */
  fit: (press: KeyPress) => 'exact' | 'loose' | null
  do: (press: Press) => void
}

/** A place that is on the page, and what its actions are done on there; null where they mean nothing. */
interface Post {
  place: ActionPlace<never>
  at: (focus: Focus) => BoundAction[]
}

export type ActionBoard = ReturnType<typeof createActionBoard>

const REACHES = ['focus', 'page', 'everywhere'] as const

/** All that can be done on the page at a moment: places come and go with what is drawn. */
export function createActionBoard(say: (why: Text) => void) {
  const posts = new Set<Post>()

  /** What there is to do, the nearest first. */
  const actionsAt = (focus: Focus): BoundAction[] =>
    REACHES.flatMap((reach) => [...posts].filter(({ place }) => place.reach === reach).flatMap(({ at }) => at(focus)))

  return {
    actionsAt,

    /** Adds a place until told to take it away. */
    post: <On extends Ground>(place: ActionPlace<On>, groundAt: (focus: Focus) => On | null): (() => void) => {
      const at = (focus: Focus) => {
        const on = groundAt(focus)
        return on === null ? [] : place.groups.flatMap(({ title, actions }) => actions.map((action) => bound(place, title, action, on)))
      }
      const post: Post = { place, at }
      posts.add(post)
      return () => posts.delete(post)
    },

    /** Does what a key means where it was pressed. A key with a meaning goes no further, also where it cannot be done: then it says why. */
    press: (event: KeyboardEvent): void => {
      if (event.defaultPrevented || event.isComposing || document.querySelector('dialog[open]')) return
      const target = event.target instanceof Element ? event.target : null
      const fitting = actionsAt(target)
        .filter(({ place }) => (place.inFields || !isTyping(target)) && (place.reach === 'focus' || !usesPress(target, event.key)))
        .map((action) => ({ action, fit: action.fit(event) }))
        .filter(({ fit }) => fit !== null)
      for (const reach of REACHES) {
        const near = fitting.filter(({ action }) => action.place.reach === reach)
        const sorted = [...near.filter(({ fit }) => fit === 'exact'), ...near.filter(({ fit }) => fit === 'loose')]
        const chosen = sorted.find(({ action }) => action.possible() !== false)?.action
        if (!chosen) continue
        event.preventDefault()
        if (event.repeat && !chosen.place.repeats) return
        const answer = chosen.possible()
        if (answer === true) chosen.do(event)
        else if (answer !== false) say(answer)
        return
      }
    },
  }
}

function bound<On extends Ground>(place: ActionPlace<On>, group: Text, action: Action<On>, on: On): BoundAction {
  const { id, name, does, keys = [], hears, byBrowser, inMenu, keyOnly } = action
  return {
    id,
    name,
    does,
    words: action.words?.(on) ?? name,
    keys: keyWords(action),
    keyOnly: keyOnly === true,
    group,
    inMenu: inMenu === true,
    place: place as ActionPlace<never>,
    possible: () => possible(action, on),
    fit: (press) => {
      if (byBrowser) return null
      const fits = keys.filter((chord) => hears?.(on, chord) ?? true).map((chord) => fitOf(chord, press))
      return fits.find((fit) => fit === 'exact') ?? fits.find((fit) => fit === 'loose') ?? null
    },
    do: (press) => action.do(on, press),
  }
}

/** Buttons and ticks are pressed with space and enter themselves. */
function usesPress(target: Element | null, key: string): boolean {
  if (key === ' ') return target?.closest('button, a, summary, input, [role="option"]') != null
  return key === 'Enter' && target?.closest('button, a, summary') != null
}
