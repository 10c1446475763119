import type { Constants } from '#engine/constants.ts'
import type { Level } from '#plan/model.ts'
import type { Effort, Seconds, Stretch } from '#units/units.ts'
import { type EffortLine, partFrom, partUpTo } from './effortLines.ts'
import { recoveryNeed } from './recoveryNeed.ts'

/** An unbroken run at hard effort, and the recovery after it. */
export interface Bout {
  /** Indices into `blocks`: first and last block of the unbroken run. */
  readonly fromBlock: number
  readonly toBlock: number
  readonly from: Seconds
  readonly to: Seconds
  readonly peak: Effort
  readonly workSeconds: Seconds
  /** The unbroken easy run after it (effort ≤ 5), lead-ins not counted. */
  readonly have: Seconds
  readonly need: Seconds
  readonly debt: Seconds
  readonly allOut: boolean
}

export interface RecoveryReport {
  readonly bouts: readonly Bout[]
  readonly totalDebt: Seconds
}

/**
 * Every hard bout with the recovery it needs and has. A bout is an unbroken run at hard
 * effort, a recovery the unbroken run of easy effort right after it; ramps are split where
 * they cross. Lead-ins and open tails neither break a run nor count. Debts stand per bout
 * and are not carried. Cost: linear in the blocks.
 */
export function findBouts(lines: readonly EffortLine[], level: Level, rules: Constants): RecoveryReport {
  const bouts: Bout[] = []
  let open: Bout | undefined
  for (const [index, line] of lines.entries()) {
    const hard = partFrom(line, rules.hardEffort)
    if (open && !(hard && hard.from === line.from)) {
      bouts.push(closed(open, recoveryAfter(lines, index, line.from, rules), level, rules))
      open = undefined
    }
    if (!hard) continue
    open = open ? lengthened(open, line, hard) : begun(line, hard)
    if (hard.to < line.to) {
      bouts.push(closed(open, recoveryAfter(lines, index, hard.to, rules), level, rules))
      open = undefined
    }
  }
  if (open) bouts.push(closed(open, 0, level, rules))
  return { bouts, totalDebt: bouts.reduce((sum, bout) => sum + bout.debt, 0) }
}

function begun(line: EffortLine, { from, to }: Stretch): Bout {
  const { block, allOut } = line
  const peak = Math.max(line.start, line.end)
  return { fromBlock: block, toBlock: block, from, to, peak, workSeconds: to - from, have: 0, need: 0, debt: 0, allOut }
}

function lengthened(bout: Bout, line: EffortLine, { from, to }: Stretch): Bout {
  return {
    ...bout,
    toBlock: line.block,
    to,
    peak: Math.max(bout.peak, line.start, line.end),
    workSeconds: bout.workSeconds + to - from,
    allOut: bout.allOut || line.allOut,
  }
}

function closed(bout: Bout, have: Seconds, level: Level, rules: Constants): Bout {
  const need = recoveryNeed({ work: bout.workSeconds, peak: bout.peak, allOut: bout.allOut }, level, rules)
  // Under a hundredth of a second is a rounding error of the beat, not a debt.
  const debt = need - have < 0.01 ? 0 : need - have
  return { ...bout, have, need, debt }
}

/** Unbroken easy seconds from the end of a bout on, inside a line or at its start; what falls from hard to easy without a rise is passed over. */
function recoveryAfter(lines: readonly EffortLine[], first: number, moment: Seconds, rules: Constants): Seconds {
  let seconds = 0
  // The bout ends inside this line, at the hard threshold, or with the line before.
  let last = moment > lines[first]!.from ? rules.hardEffort : lines[first - 1]!.end
  for (let i = first; i < lines.length; i++) {
    const line = lines[i]!
    const begin = i === first ? moment : line.from
    const easy = partUpTo(line, rules.recoveryEffort)
    const falls = seconds === 0 && line.end < line.start && (begin > line.from || line.start <= last)
    if (easy ? easy.from > begin && !falls : !falls) return seconds
    if (easy) seconds += easy.to - Math.max(easy.from, begin)
    if (easy && easy.to < line.to) return seconds
    last = line.end
  }
  return seconds
}
