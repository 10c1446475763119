import type { SetState } from './state.ts'

/** What was copied, as it is given to the system's clipboard: HTML that carries it, and lines of text. */
export interface Carried {
  html: string
  text: string
}

/** What this window copied last, for where the browser does not let a page read the system's clipboard. */
export interface ClipSlice {
  copied: Carried | null
  keepCopied: (carried: Carried) => void
}

export function createClipSlice(set: SetState): ClipSlice {
  return {
    copied: null,
    keepCopied: (copied) => set({ copied }),
  }
}
