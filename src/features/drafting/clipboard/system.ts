import { chordWords } from '#actions/keys/chord.ts'
import type { Carried } from '#store/clipSlice.ts'
import type { AppStore } from '#store/state.ts'
import { or } from '#words/forms.ts'
import { words } from '#words/words.ts'

/** The system's clipboard without its keys: where a button copies or pastes, a browser may ask first, or refuse. */

/** Hands it to the system's clipboard; where the browser refuses, it can still be pasted in this window, and that is said. */
export async function give(store: AppStore, carried: Carried): Promise<void> {
  const { keepCopied, notify } = store.getState()
  keepCopied(carried)
  try {
    const part = (type: string, text: string) => ({ [type]: new Blob([text], { type }) })
    await navigator.clipboard.write([new ClipboardItem({ ...part('text/html', carried.html), ...part('text/plain', carried.text) })])
  } catch {
    notify({ kind: 'info', sentence: words.clipboard.onlyHere({ keys: or(chordWords('Mod+C')) }) })
  }
}

/** What the system's clipboard holds, else what this window copied last; null, and said why, where there is neither. */
export async function fetchCarried(store: AppStore): Promise<Carried | null> {
  try {
    const items = await navigator.clipboard.read()
    const read = async (type: string) => {
      const item = items.find(({ types }) => types.includes(type))
      return item ? (await item.getType(type)).text() : ''
    }
    return { html: await read('text/html'), text: await read('text/plain') }
  } catch {
    const { copied, notify } = store.getState()
    if (!copied) notify({ kind: 'info', sentence: words.clipboard.notRead({ keys: or(chordWords('Mod+V')) }) })
    return copied
  }
}
