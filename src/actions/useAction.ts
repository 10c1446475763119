import { useApp } from '#store/useApp.ts'
import { tell } from '#words/words.ts'
import { type Action, ariaKeys, type Ground, keyWords, type Possible, type Press, possible, READ_ONLY } from './action.ts'

/** A button of an action, whatever it looks like. */
interface ActionAsButton {
  words: string
  /** Its first key, as it stands on the screen. */
  key: string | undefined
  /** Whether it can be done now; a sentence that says why not. */
  possible: boolean | string
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
  const answer = useApp(() => toldAnswer(possible(action, on)))
  const drawn = useApp(() => isDrawn(possible(action, on)))
  const words = useApp(() => tell(action.words?.(on) ?? action.name))
  const does = useApp(() => tell(action.tells?.(on) ?? action.does))
  const pressed = useApp(() => action.pressed?.(on))
  const [key] = keyWords(action)
  const told = typeof answer === 'string' ? answer : does
  return {
    words,
    key,
    possible: answer,
    drawn,
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

const toldAnswer = (answer: Possible): boolean | string => (typeof answer === 'boolean' ? answer : tell(answer))

const isDrawn = (answer: Possible): boolean => answer !== false && answer !== READ_ONLY
