import { useEffect, useEffectEvent, useState } from 'react'
import { needOf, type Proposal, weighCuts } from '#engine/leading/cuts/weighCuts.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import type { Seconds } from '#units/units.ts'
import { words } from '#words/words.ts'

interface Proposals {
  shown: Proposal | undefined
  /** Whether there is another one. */
  more: boolean
  other: () => void
  /** A sentence where the class runs over and nothing that may go is long enough. */
  none: string
}

interface Found {
  led: LedClass
  proposals: readonly Proposal[]
  need: Seconds
}

/** Less is no overrun. */
const NOTICED: Seconds = 1
/** A hold puts off the end without a press: how often that is looked at. */
const LOOK_MS = 5000

/**
 * What to leave out, worked out anew after every press, at every block, and while a hold goes on.
 * One computation at a time, with frames in between.
 *
 * @param placeAt changes with every block
 * @param now class time of this moment
 */
export function useProposals(led: LedClass, placeAt: Seconds, now: () => Seconds): Proposals {
  const [found, setFound] = useState<Found | null>(null)
  const [index, setIndex] = useState(0)
  const timeNow = useEffectEvent(now)
  // biome-ignore lint/correctness/useExhaustiveDependencies: what has begun with a new block can no longer be cut
  useEffect(() => {
    let callOff = () => {}
    const look = () => {
      callOff()
      const at = timeNow()
      const need = needOf(led, at)
      if (need < NOTICED) return setFound(null)
      callOff = inSteps(weighCuts(led, at), (proposals) => {
        setFound({ led, proposals, need })
        setIndex(0)
      })
    }
    look()
    const again = led.led.hold ? setInterval(look, LOOK_MS) : undefined
    return () => {
      callOff()
      clearInterval(again)
    }
  }, [led, placeAt])
  const proposals = found?.led === led ? found.proposals : []
  return {
    shown: proposals[index],
    more: proposals.length > 1,
    other: () => setIndex((before) => (proposals.length > 0 ? (before + 1) % proposals.length : 0)),
    none: found?.led === led && proposals.length === 0 ? words.leading.nothingToSkip({ seconds: Math.ceil(found.need) }) : '',
  }
}

/** Runs a generator one step a task, so that frames come in between; the result calls it off. */
function inSteps<Result>(steps: Generator<undefined, Result>, done: (result: Result) => void): () => void {
  let timer = setTimeout(function step() {
    const { done: over, value } = steps.next()
    if (over) done(value)
    else timer = setTimeout(step, 0)
  }, 0)
  return () => clearTimeout(timer)
}
