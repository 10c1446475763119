import type { RideReport } from '#engine/report.ts'
import { quotedItem, riderInSentence } from '#plan/names.ts'
import { tell, words } from '#words/words.ts'

/** How far two demands have to lie apart to be told. */
const NOTHING = 0.05

/** What another calibration does to the estimated effort of the rider the checks use, in a sentence: the block it changes most, and by how much. */
export function changeWords(before: RideReport, after: RideReport): string {
  const rider = before.riders.findIndex(({ reference }) => reference)
  const changes = before.blocks.flatMap((played, i) => {
    const [old, now] = [before, after].map((report) => report.riders[rider]?.demand[i]?.mean)
    return old === undefined || now === undefined ? [] : [{ played, old, now }]
  })
  const most = changes.reduce<(typeof changes)[number] | undefined>(
    (best, each) => (best && Math.abs(best.now - best.old) >= Math.abs(each.now - each.old) ? best : each),
    undefined,
  )
  const name = tell(riderInSentence(before.riders[rider]!.rider))
  if (!most || Math.abs(most.now - most.old) < NOTHING) return words.calibrating.noChange({ rider: name })
  const { played, old, now } = most
  return words.calibrating.mostChange({ rider: name, block: tell(quotedItem(played.block)), at: played.from, now, before: old })
}
