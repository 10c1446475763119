import { reportRiders } from '#engine/assembly/reportRiders.ts'
import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import { manyBlocks } from '#tests/support/manyBlocks.ts'
import { stepRiders } from '#tests/support/reference/stepping.ts'
import { type Row, spread } from './row.ts'

const BLOCKS = 200
const RUNS = 200

/** Heart rate, reserve and energy of three riders: the engine's closed forms beside plain one-second steps of the same models. */
export default function benchRiders(): Row[] {
  const ride = manyBlocks(BLOCKS)
  const { spans, blocks, overall } = computeRide(ride)
  const rules = constantsOf(ride)
  const closed = timed(() => reportRiders(ride, spans, blocks, rules))
  const stepped = timed(() => stepRiders(ride, spans, blocks, rules))
  const times = `${(stepped.median / closed.median).toFixed(1)} times the closed forms (aim 20), and only near`
  return [
    { what: `three riders, ${BLOCKS} blocks, closed forms`, ...closed, note: `${Math.round(overall.total / 60)} min, exact` },
    { what: `three riders, ${BLOCKS} blocks, one-second steps`, ...stepped, note: times },
  ]
}

function timed(run: () => unknown) {
  const times: number[] = []
  for (let i = 0; i < 2 * RUNS; i++) {
    const start = performance.now()
    run()
    if (i >= RUNS) times.push(performance.now() - start)
  }
  return spread(times)
}
