import { computeRide } from '#engine/computeRide.ts'
import { editBlock } from '#plan/edits.ts'
import { manyBlocks } from '#tests/support/manyBlocks.ts'
import { type Row, spread } from './row.ts'

const SIZES = [20, 60, 200, 600]
const WARM_UP = 50
const RUNS = 200
/** For a ride of 200 blocks, twice as long as any class. */
const AIM = { blocks: 200, milliseconds: 2 }

/** The planner on rides of growing length; before each run one block is made another length, as an edit does it. */
export default function benchComputeRide(): Row[] {
  return SIZES.map((blocks) => {
    const ride = manyBlocks(blocks)
    const times: number[] = []
    for (let run = 0; run < WARM_UP + RUNS; run++) {
      const counts = 16 + 8 * (run % 5)
      const fresh = editBlock(ride, `block-${run % blocks}`, (block) => ({ ...block, length: { counts } }))
      const start = performance.now()
      computeRide(fresh)
      if (run >= WARM_UP) times.push(performance.now() - start)
    }
    const figures = spread(times)
    const perBlock = `${((figures.median / blocks) * 1000).toFixed(1)} µs a block`
    return {
      what: `computeRide, ${blocks} blocks`,
      ...figures,
      note: perBlock,
      ...(blocks === AIM.blocks ? { aim: AIM.milliseconds } : {}),
    }
  })
}
