import type { PlayedBlock } from '#engine/played.ts'
import type { RecoveryReport } from '#engine/recovery/findBouts.ts'
import type { Seconds } from '#units/units.ts'
import { type Said, say } from '#words/said.ts'
import type { Measures } from './measures.ts'
import type { Overall } from './overall.ts'
import { rankCorrelation } from './rankCorrelation.ts'
import type { StrainCurve } from './strainCurve.ts'
import { type Wave, wavesOf } from './waves.ts'

type ShapeName = 'build' | 'bell' | 'waves' | 'two peaks' | 'plateau' | 'saw' | 'easy ride'

/** The arc of a class. */
export interface ShapeReport {
  readonly name: ShapeName
  readonly waves: readonly Wave[]
  /** Where the last of the hardest bouts starts, as a share of the ride; null without hard bouts. */
  readonly lastPeak: number | null
  /** Rank correlation of the waves' heights with their order, −1 to 1: above 0 they grow; null under three waves. */
  readonly build: number | null
  /** The longest easy stretch between first and last hard bout: its middle as a share of the ride. */
  readonly rest: { readonly at: number; readonly seconds: Seconds } | null
  /** In one sentence. */
  readonly sentence: Said
}

/** The arc in measures and in plain words. */
export function shapeOfRide(
  strain: StrainCurve,
  blocks: readonly PlayedBlock[],
  { bouts }: RecoveryReport,
  { lastHardest }: Measures,
  overall: Overall,
  easy: number,
): ShapeReport {
  const waves = wavesOf(strain)
  const lastPeak = lastHardest !== null && overall.total > 0 ? lastHardest / overall.total : null
  const rest = longestRest(blocks, bouts[0]?.from, bouts.at(-1)?.from, easy, overall.total)
  const build = waves.length < 3 ? null : rankCorrelation(waves.map(({ value }) => value))
  const name = nameOf(waves, build, strain, overall)
  return { name, waves, lastPeak, build, rest, sentence: sentenceOf(waves, lastPeak, rest) }
}

function longestRest(
  blocks: readonly PlayedBlock[],
  from: Seconds | undefined,
  to: Seconds | undefined,
  easy: number,
  total: Seconds,
): ShapeReport['rest'] {
  if (from === undefined || to === undefined || total <= 0) return null
  const rests: { from: Seconds; to: Seconds }[] = []
  // A lead-in between two easy blocks is rest too.
  let goesOn = false
  for (const { block, from: start, to: end } of blocks) {
    if (end <= start) continue
    const isRest = Math.max(block.effort.from, block.effort.to) <= easy && start >= from && end <= to
    if (isRest && goesOn) rests.at(-1)!.to = end
    else if (isRest) rests.push({ from: start, to: end })
    goesOn = isRest
  }
  const [best] = rests.sort((a, b) => b.to - b.from - (a.to - a.from))
  return best ? { at: (best.from + best.to) / 2 / total, seconds: best.to - best.from } : null
}

/** From this many waves on the arc is a saw; waves that grow this steadily are a build (common practice). */
const SAW = 7
const GROWS = 0.6

function nameOf(waves: readonly Wave[], build: number | null, strain: StrainCurve, { total }: Overall): ShapeName {
  if (waves.length === 0) return 'easy ride'
  if (waves.length >= SAW) return 'saw'
  if (build !== null) return build >= GROWS ? 'build' : 'waves'
  if (waves.length === 2) return 'two peaks'
  if (highShare(strain) > 0.5) return 'plateau'
  return total > 0 && strain.maximum.at / total > 0.65 ? 'build' : 'bell'
}

/** Share of the ride spent within a fifth of the highest strain, by whole pieces. */
function highShare({ pieces, maximum }: StrainCurve): number {
  let high = 0
  let all = 0
  for (const [i, { from, to, start }] of pieces.entries()) {
    const end = pieces[i + 1]?.start ?? start
    all += to - from
    if (Math.min(start, end) >= 0.8 * maximum.value) high += to - from
  }
  return all > 0 ? high / all : 0
}

function sentenceOf(waves: readonly Wave[], lastPeak: number | null, rest: ShapeReport['rest']): Said {
  if (waves.length === 0) return say('figures.noPeak')
  return say('figures.shape', { peaks: waves.length, lastHardest: lastPeak, longestRest: rest?.at ?? null })
}
