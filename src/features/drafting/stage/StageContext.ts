import { createContext, type RefObject, useContext } from 'react'
import type { TimeScale } from './timeScale.ts'

/** What parts of the stage need to turn a place under the pointer into a time. */
interface StageGround {
  lane: RefObject<HTMLDivElement | null>
  scroller: RefObject<HTMLDivElement | null>
  scale: TimeScale
}

export const StageContext = createContext<StageGround | null>(null)

export function useStage(): StageGround {
  const stage = useContext(StageContext)
  if (!stage) throw new Error('a part of the stage stands outside it')
  return stage
}
