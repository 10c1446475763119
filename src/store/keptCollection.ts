import type { GetState } from './state.ts'

/** A list kept on this device, as a slice shows it: read anew after every change, and what goes wrong is said in a notice. */
interface KeptCollection<Item> {
  /** Reads the list and shows it; the list, or nothing where it cannot be read, which is said. */
  refresh: () => Promise<readonly Item[]>
  /**
   * Changes what is kept and reads the list anew. A text that `act` gives back is announced. False where it
   * could not be done, which `failed` says.
   */
  change: (failed: string, act: () => Promise<unknown>) => Promise<boolean>
  /** Something that may go wrong with storage and leaves the list as it is: false then, and said. */
  attempt: (failed: string, act: () => Promise<void>) => Promise<boolean>
}

/** `list` is undefined where nothing can be kept: then nothing is read or changed, and nothing said. `notListed` is asked when it is told, in the language of that moment. */
export function keptCollection<Item>(
  get: GetState,
  list: (() => Promise<readonly Item[]>) | undefined,
  show: (items: readonly Item[]) => void,
  notListed: () => string,
): KeptCollection<Item> {
  const attempt = async (failed: string, act: () => Promise<void>): Promise<boolean> => {
    try {
      await act()
      return true
    } catch (error) {
      get().notify({ kind: 'problem', sentence: failed, details: [error instanceof Error ? error.message : String(error)] })
      return false
    }
  }
  const refresh = async (): Promise<readonly Item[]> => {
    let items: readonly Item[] = []
    if (!list) return items
    const read = await attempt(notListed(), async () => {
      items = await list()
    })
    if (read) show(items)
    return items
  }
  return {
    refresh,
    attempt,
    change: async (failed, act) => {
      if (!list) return false
      const done = await attempt(failed, async () => {
        const said = await act()
        if (typeof said === 'string') get().announce(said)
      })
      await refresh()
      return done
    },
  }
}
