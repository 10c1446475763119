import { createContext } from 'react'

/** Keeps what is typed in fields and not taken yet, so that it comes back to its field after the page has ended. */
export interface DraftKeeper {
  /**
   * What stood in a field when the page ended.
   *
   * @param over the value it was typed over; another one has made it pointless
   */
  left: (field: string, over: string) => string | null
  /** Text stands in a field now. */
  note: (field: string, over: string, text: string) => void
  /** It was taken, or given up. */
  drop: (field: string) => void
  /** The field is gone from the page with its text. */
  leave: (field: string) => void
}

export const DraftKeeping = createContext<DraftKeeper | null>(null)

/** What fields are about, as a text: a label alone says too little, since many blocks have a length. */
export const DraftScope = createContext('')
