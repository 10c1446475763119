import { computeRide } from '#engine/computeRide.ts'
import { HANDBOOK_ROWS, handbookRest } from '#engine/recovery/handbookRest.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import { aBlock, aSection, aSet, inSeconds, smallRide } from '#tests/support/smallRide.ts'
import rows from './rows.json' with { type: 'json' }

interface Inputs {
  system: string
  work_s: number
  rest_s: number
}

const open = (value: number): number | null => (Number.isFinite(value) ? value : null)

/** A set of eight rounds of work and rest, as a class plays it. */
function ratioOf({ work_s, rest_s }: Inputs): number | null {
  const parts = [
    aBlock('work', { ...inSeconds(work_s), effort: { from: 9, to: 9 } }),
    aBlock('rest', { ...inSeconds(rest_s), effort: { from: 3, to: 3 } }),
  ]
  return computeRide({ ...smallRide(), sections: [aSection('s', { blocks: [aSet('set', parts, { rounds: 8 })] })] }).sets[0]!.ratio
}

checkRows('work to rest', rows, {
  'nsca.rest': ({ work_s }: Inputs) => {
    const rest = handbookRest(work_s)!
    return [rest.low, rest.high]
  },
  'nsca.': ({ system }: Inputs) => {
    const { work, restPerWork, percentMaxPower } = HANDBOOK_ROWS.find((row) => row.system === system)!
    return {
      time_s: [work.from, open(work.to)],
      rest_per_work: [restPerWork.low, restPerWork.high],
      percent_max_power: [percentMaxPower.low, percentMaxPower.high],
    }
  },
  'ratio.': ratioOf,
})
