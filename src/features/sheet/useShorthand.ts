import { useState } from 'react'
import { readShorthand, type Short, writeShorthand } from './contents/shorthand.ts'
import { keep, readKept } from './remembered.ts'

const NAME = 'shorthand'

export interface Shorthand {
  terms: readonly Short[]
  /** Takes other terms and keeps them on this machine. */
  onChange: (terms: readonly Short[]) => void
}

/** The short forms of whoever uses this machine: kept here, in no ride and no link. */
export function useShorthand(): Shorthand {
  const [terms, setTerms] = useState<readonly Short[]>(() => keptTerms(readKept(NAME)))
  const onChange = (next: readonly Short[]) => {
    setTerms(next)
    keep(NAME, writeShorthand(next))
  }
  return { terms, onChange }
}

function keptTerms(text: string | null): readonly Short[] {
  const read = readShorthand(text ?? '')
  return read.ok ? read.terms : []
}
