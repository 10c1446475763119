import { useApp } from '#store/useApp.ts'
import { type Action, ariaKeys, type Ground, keyWords, type Possible, type Press, possible, READ_ONLY } from './action.ts'

/** A button of an action, whatever it looks like. */
interface ActionAsButton {
  words: string
  /** Its first key, as it stands on the screen. */
  key: string | undefined
  possible: Possible
  /** Whether there is a button at all: none for what means nothing now, and none for changes to a ride that takes none. */
  drawn: boolean
  props: {
    'data-action': string
    'aria-keyshortcuts': string | undefined
    title: string | undefined
    disabled: boolean
    onClick: (press: Press) => void
  }
  pressed: boolean | undefined
}

/** What a button of an action is made of; follows the page's state. */
export function useAction<On extends Ground>(action: Action<On>, on: On): ActionAsButton {
  const answer = useApp(() => possible(action, on))
  const words = useApp(() => action.words?.(on) ?? action.name)
  const does = useApp(() => action.tells?.(on) ?? action.does)
  const pressed = useApp(() => action.pressed?.(on))
  const [key] = keyWords(action)
  const told = typeof answer === 'string' ? answer : does
  return {
    words,
    key,
    possible: answer,
    drawn: answer !== false && answer !== READ_ONLY,
    props: {
      'data-action': action.id,
      'aria-keyshortcuts': ariaKeys(action),
      title: key === undefined ? told : `${told} (${key})`,
      disabled: answer !== true,
      onClick: (press) => action.do(on, press),
    },
    pressed,
  }
}
