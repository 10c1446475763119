import { isCounted } from '#plan/model.ts'
import { eachBlock, type Rule } from './rule.ts'

/** Under a song with a beat grid a block has counts, anywhere else seconds. */
export const lengthsFitSection: Rule = (ride) =>
  [...eachBlock(ride)].flatMap(({ block, path, section }) => {
    const counted = isCounted(section)
    if (counted === 'counts' in block.length) return []
    return [{ path: [...path, 'length'], wrong: { problem: counted ? 'lengthInCounts' : 'lengthInSeconds' } }]
  })
