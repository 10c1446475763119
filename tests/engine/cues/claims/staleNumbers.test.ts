import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { makeVariant } from '#engine/fit/makeVariant.ts'
import { replaceSong } from '#engine/fit/replaceSong.ts'
import { fitRide } from '#engine/fit/rideFit.ts'
import { fitSection } from '#engine/fit/sectionFit.ts'
import { numberWords } from '#engine/speech/english/numberWords.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import type { Block, Cue, Ride } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { aSong } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const blocksOf = ({ sections }: Ride): Block[] =>
  sections.flatMap(({ blocks }) => blocks.flatMap((item) => ('parts' in item ? item.parts : [item])))
const countsOf = ({ length }: Block): number | undefined => ('counts' in length ? length.counts : undefined)

/** The ride with one cue at every block that is counted, and no other cues. */
function saying(ride: Ride, cue: (block: Block, counts: number) => Omit<Cue, 'id'> | null): Ride {
  const copy = structuredClone(ride)
  for (const block of blocksOf(copy)) {
    const counts = countsOf(block)
    const made = counts === undefined ? null : cue(block, counts)
    Object.assign(block, { cues: made === null ? [] : [{ id: `${block.id}-said`, ...made }] })
  }
  return copy
}

const countsText = (counts: number) => `For ${numberWords(counts)} counts.`
const eightsText = (counts: number) => `${numberWords(counts / 8)} eights of this.`

const inCounts = (ride: Ride) => saying(ride, (_, counts) => ({ moment: 'announce', lead: { counts: 8 }, text: countsText(counts) }))
const inEights = (ride: Ride) =>
  saying(ride, (_, counts) => (counts % 8 === 0 ? { moment: 'announce', lead: { counts: 8 }, text: eightsText(counts) } : null))
const inSeconds = (ride: Ride) => {
  const report = computeRide(ride)
  return saying(ride, ({ id }) => {
    const { from, to } = report.blocks.find(({ block }) => block.id === id)!
    return { moment: 'announce', lead: { counts: 8 }, text: `${numberWords(Math.round(to - from))} seconds.` }
  })
}

/** The blocks whose cue speaks a number the plan does not have. */
const flaggedIn = (ride: Ride): string[] => [
  ...new Set(computeRide(ride).findings.flatMap(({ rule, blockId }) => (rule === 'cueNumbers' && blockId ? [blockId] : []))),
]

/** The blocks whose cue would be said otherwise by the same rule now. */
function otherwise(ride: Ride, said: (ride: Ride) => Ride): Block[] {
  const now = new Map(blocksOf(said(ride)).map(({ id, cues }) => [id, cues[0]?.text]))
  return blocksOf(ride).filter(({ id, cues }) => cues.length > 0 && cues[0]!.text !== now.get(id))
}

/** What a cue may be about besides its own block, where like blocks follow each other. */
function opensRun(ride: Ride, { id, cues }: Block, text: (counts: number) => string): boolean {
  const { blocks } = computeRide(ride)
  const first = blocks.find(({ block }) => block.id === id)!
  const ends = blocks.filter(({ index, section }) => index > first.index && section === first.section)
  return ends.some(({ countTo }) => text(countTo! - first.countFrom!) === cues[0]!.text)
}

/** The blocks whose cue now says what neither they nor the stretch they open have. */
const staleIn = (ride: Ride, said: typeof inCounts): string[] =>
  otherwise(ride, said)
    .filter((block) => !opensRun(ride, block, (counts) => (said === inCounts ? countsText(counts) : eightsText(counts))))
    .map(({ id }) => id)

describe('counts that a change of the ride makes stale', () => {
  it('are right where they were written', () => {
    for (const name of ['spark', 'ridge'] as const) {
      for (const said of [inCounts, inEights, inSeconds]) expect(flaggedIn(said(demoRide(name)))).toEqual([])
    }
  })

  it.each([
    ['in counts', inCounts],
    ['in eights', inEights],
  ])('%s, in the same class in another length', (_, said) => {
    let found = 0
    for (const minutes of [30, 35, 40, 50]) {
      const after = makeVariant(said(demoRide('ridge')), minutes, 'variant').ride!
      const stale = staleIn(after, said)
      found += stale.length
      expect(flaggedIn(after).toSorted()).toEqual(stale.toSorted())
    }
    expect(found).toBeGreaterThan(9)
  })

  it('after fitting a ride to its slot', () => {
    const ride = inCounts({ ...demoRide('ridge'), slotMinutes: 42 })
    const fit = fitRide(ride)
    if (!fit.ok) throw new Error(told(fit.reason))
    const after = fit.command.apply(ride)
    const stale = staleIn(after, inCounts)
    expect(stale.length).toBeGreaterThan(0)
    expect(flaggedIn(after).toSorted()).toEqual(stale.toSorted())
  })

  it('after fitting a section to a shorter song', () => {
    const spark = demoRide('spark')
    const shorter = {
      ...spark,
      sections: spark.sections.map((section) => (section.id === 's4' ? { ...section, outCount: 76 * 8 } : section)),
    }
    const ride = inEights(shorter)
    const fit = fitSection(ride, 's4')
    if (!fit.ok) throw new Error(told(fit.reason))
    const after = fit.command.apply(ride)
    expect(flaggedIn(after).toSorted()).toEqual(staleIn(after, inEights).toSorted())
    expect(flaggedIn(after)).toHaveLength(4)
  })

  it('of what is left, when the block no longer has as much', () => {
    const { id } = blocksOf(demoRide('ridge')).find((block) => (countsOf(block) ?? 0) >= 128)!
    const ride = saying(demoRide('ridge'), (block) =>
      block.id === id ? { moment: 'form', lead: { counts: 64 }, text: 'Two more phrases.' } : null,
    )
    expect(flaggedIn(ride)).toEqual([])
    // Said as the block begins now, with half as much to go.
    expect(flaggedIn(resizeBlock(ride, { blockId: id, length: { counts: 32 } }).apply(ride))).toEqual([id])
  })

  it('and seconds, when the song becomes a slower one', () => {
    const ride = inSeconds(demoRide('spark'))
    const slow = aSong('slow', { grid: gridOfTempo(120), lengthSeconds: 600 })
    const swap = replaceSong(ride, 's4', slow)!
    const after = swap.command.apply(ride)
    const own = blocksOf({ ...after, sections: after.sections.filter(({ id }) => id === 's4') }).map(({ id }) => id)
    expect(flaggedIn(after).toSorted()).toEqual(own.toSorted())
    expect(flaggedIn(replaceSong(inCounts(demoRide('spark')), 's4', slow)!.command.apply(inCounts(demoRide('spark'))))).toEqual([])
  })
})
