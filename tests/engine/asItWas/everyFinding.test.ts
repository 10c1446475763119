import fc from 'fast-check'
import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Finding } from '#engine/report.ts'
import { type Block, type Cue, isSet, type Level, type Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import { told } from '#tests/support/told.ts'
import { sayReport } from './sayReport.ts'

// A few findings of each rule, with how far past their line they are and what each of their repairs would change, kept as
// text like the rest of this folder.

/** Of each rule as many are kept, each from another ride. */
const MOST = 4
const LEVELS: readonly Level[] = ['beginner', 'mixed', 'advanced']
const ROOMS = ['studio', 'online'] as const

/** The same rides every time: what is kept may not hang on the seed of a run. */
const rides = (): Ride[] => [
  demoRide('spark'),
  { ...demoRide('ridge'), room: 'online', level: 'beginner' },
  ...Array.from({ length: 30 }, (_, i): Ride => ({ ...plausibleRide(i + 1), room: ROOMS[i % 2]!, level: LEVELS[i % 3]! })),
  ...Array.from({ length: 6 }, (_, i): Ride => talkative({ ...plausibleRide(i + 31), room: ROOMS[i % 2]! })),
  ...fc.sample(arbitraryRide({ sections: 4, items: 5 }), { seed: 11, numRuns: 60 }),
]

/** The same class with more said in it than there is breath for. */
function talkative(ride: Ride): Ride {
  const more = ({ text, ...cue }: Cue): Cue => ({
    ...cue,
    text: `${text} Right hand to the knob, left elbow soft. ${text} Stay with me now. ${text}`,
  })
  const said = (block: Block): Block => ({ ...block, cues: block.cues.map(more) })
  return {
    ...ride,
    sections: ride.sections.map((section) => ({
      ...section,
      blocks: section.blocks.map((item) => (isSet(item) ? { ...item, parts: item.parts.map(said) } : said(item))),
    })),
  }
}

/** What a finding says, and what its repairs make other than it was. */
function sayFinding({ rule, severity, text, why, at, block, amount, later, proposed }: Finding, ride: Ride): string {
  const before = new Set(linesOf(ride))
  const repairs = proposed.map(({ label, command }) => {
    const changed = linesOf(command.apply(ride)).filter((line) => !before.has(line)).map((line) => `    ${line}`) // biome-ignore format: one row
    return [`  ${told(label)}`, ...changed.slice(0, 6)].join('\n')
  })
  const figures = sayReport({ severity, at, block, amount, later, why }, new Set()).trim().slice(2)
  return [`${rule} ${told(text)}`, `  ${figures}`, ...repairs].join('\n')
}

const linesOf = (ride: Ride): string[] => sayReport(ride, new Set()).trim().split('\n')

it('what is found in rides of many kinds', async () => {
  const kept = new Map<string, string[]>()
  for (const ride of rides()) {
    const met = new Set<string>()
    for (const finding of computeRide(ride).findings) {
      const own = kept.get(finding.rule) ?? []
      if (own.length >= MOST || met.has(finding.rule)) continue
      met.add(finding.rule)
      kept.set(finding.rule, [...own, sayFinding(finding, ride)])
    }
  }
  const text = [...kept].sort(([a], [b]) => (a < b ? -1 : 1)).flatMap(([, own]) => own)
  await expect(`${text.join('\n\n')}\n`).toMatchFileSnapshot('findings.txt')
})
