import type { Effort } from '#units/units.ts'

/** Texts of the screen by the place they stand in; an empty one is not shown. */
export type Slot = NowSlot | NextSlot | 'clock' | 'total' | 'slack' | 'song' | 'songLeft' | 'songEight' | 'cue'

/** What is ridden now. */
export type NowSlot =
  | ('round' | 'name' | 'meta' | 'resistanceLabel' | 'resistance' | 'cadenceLabel' | 'cadence' | 'upForLabel' | 'upFor' | 'feel')
  | ('count' | 'countLabel')

/** What comes next. */
export type NextSlot = 'nextWhen' | 'nextName' | 'nextRest' | 'nextTime'

/** All that is painted for one moment of a class. */
export interface LeadView {
  texts: Record<Slot, string>
  /** Eights of the block that are behind, and how many it has; seconds without beats. Of none: no bar. */
  bar: { done: number; of: number }
  /** The count in the eight, from 1, of how many; 0 where there is no beat. `passed`: how much of it is over, 0 to 1. */
  beat: { count: number; of: number; passed: number }
  effort: Effort
  /** The change is near. */
  soon: boolean
  overrun: boolean
  /** What the screen says to those who hear it; another one for every change. */
  spoken: string
}
