import type { Constants } from '#engine/constants.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { EffortLine } from '#engine/recovery/effortLines.ts'
import type { SetReport } from '#engine/report.ts'
import { workAndEase } from '#engine/shape/effortMeasures.ts'

/** Every set with its work and easy seconds over all rounds. */
export function reportSets(blocks: readonly PlayedBlock[], lines: readonly EffortLine[], rules: Constants): SetReport[] {
  const reports: SetReport[] = []
  let line = 0
  let first = 0
  while (first < blocks.length) {
    const set = blocks[first]!.set?.set
    let end = first + 1
    if (set) while (end < blocks.length && blocks[end]!.set?.set === set) end++
    const own: EffortLine[] = []
    for (; line < lines.length && lines[line]!.block < end; line++) own.push(lines[line]!)
    if (set) {
      const work = workAndEase(own, rules.workEffort, rules.easyEffort)
      reports.push({ setId: set.id, from: blocks[first]!.from, to: blocks[end - 1]!.to, ...work })
    }
    first = end
  }
  return reports
}
