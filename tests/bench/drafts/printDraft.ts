import type { Drafted } from '#tests/support/drafts/criterion.ts'
import { formatClock } from '#units/formatClock.ts'

/** A draft as text to be read as an instructor would teach it: each song, then each block with its time, cadence, total and effort. */
export function printDraft({ ride, report, told }: Drafted): string[] {
  const { difficulty, overall, measures } = report
  const lines = [
    `${ride.title}: ${difficulty.points.toFixed(0)} of 100 (${Object.entries(difficulty.parts)
      .map(([part, points]) => `${part} ${points.toFixed(0)}`)
      .join(', ')}), work ${(100 * overall.workShare).toFixed(0)} %, longest hard ${measures.longestHard.toFixed(0)} s`,
    ...told.arc.map((sentence) => `  ${sentence}`),
  ]
  for (const [index, { text }] of told.songs.entries()) {
    lines.push('', text)
    for (const { block, set, section, from, to, cadence, strikesPerBeat, ledger } of report.blocks) {
      if (section !== index || to <= from) continue
      const rpm = cadence.kind === 'turning' ? `${cadence.from.toFixed(0)}${strikesPerBeat === null ? ' off' : ''}` : 'still'
      const effort = block.effort.from === block.effort.to ? `${block.effort.from}` : `${block.effort.from}-${block.effort.to}`
      const what = `${block.label ?? block.terrain}${set ? ` (${set.round} of ${set.set.rounds})` : ''}${block.lead === 'swap' ? ', swap' : ''}${block.water ? ', water' : ''}`
      lines.push(
        `  ${formatClock(Math.round(from)).padStart(5)} ${`${(to - from).toFixed(0)} s`.padStart(5)}  ${what.padEnd(30)} ${block.posture.padEnd(9)} ${rpm.padStart(7)} rev/min  total ${ledger.total.padEnd(5)} effort ${effort}`,
      )
    }
  }
  const noticed = report.findings.filter(({ severity }) => severity !== 'hint').map(({ text }) => `  ! ${text}`)
  return [...lines, ...noticed, ...report.findings.filter(({ severity }) => severity === 'hint').map(({ text }) => `  · ${text}`)]
}
