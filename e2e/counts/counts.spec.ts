import type { Page } from '@playwright/test'
import { openRidewright } from '#e2e/support/openRidewright.ts'
import { expect, test } from '#e2e/support/test.ts'
import { type Block, isSet, type Ride } from '#plan/model.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import { FLATS_AND_CLIMBS, HILLS_AND_JUMPS, type WantedClass } from './classes.ts'
import { enterAsExpert, enterAsNewcomer } from './entering.ts'
import { countActions, countsOf, sumOf } from './events.ts'

/** The newest ride the page has kept. */
async function keptRide(page: Page): Promise<Ride> {
  await expect(page.getByText('saved', { exact: true })).toBeVisible()
  const text = await page.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const opening = indexedDB.open('ridewright')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const all = opening.result.transaction('rides').objectStore('rides').getAll()
          all.onsuccess = () => resolve(all.result.toSorted((a, b) => b.updated - a.updated)[0].text)
          all.onerror = () => reject(all.error)
        }
      }),
  )
  return JSON.parse(text)
}

/** What is asked for of a block, and what it has. */
function facts(block: Block) {
  const { length, effort, resistance, posture, terrain } = block
  const at = resistance.kind === 'total' ? resistance.from : null
  return { terrain, posture, eights: 'counts' in length ? length.counts / 8 : null, effort: effort.from, at }
}

function wantedFacts({ songs }: WantedClass) {
  return songs.map(({ blocks }) =>
    blocks.map((block) => {
      const pattern = PATTERNS.find(({ id }) => id === block.pattern)!
      const [whole, half] = [/^(\d+)(?!\/)/.exec(block.to ?? ''), /(\d)\/(\d)/.exec(block.to ?? '')]
      const turns = Number(whole?.[1] ?? 0) + (half ? Number(half[1]) / Number(half[2]) : 0)
      return {
        terrain: pattern.terrain,
        posture: pattern.posture,
        eights: block.eights ?? pattern.eights,
        effort: block.effort ?? pattern.effort.from,
        at: block.to === undefined ? pattern.total.from : turns * 4,
      }
    }),
  )
}

/** The ride is the class that was wanted, block by block, and says what was to be said. */
function expectClass(ride: Ride, wanted: WantedClass): void {
  const blocks = ride.sections.map((section) => section.blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))
  expect(blocks.map((song) => song.map(facts))).toEqual(wantedFacts(wanted))
  const said = blocks.map((song) => song.map(({ cues }) => cues[1]?.text))
  expect(said).toEqual(wanted.songs.map((song) => song.blocks.map(({ says }) => says)))
}

const WAYS = [
  { kind: 'hills and jumps, 50 blocks, 76 cues', wanted: HILLS_AND_JUMPS, way: 'newcomer', enter: enterAsNewcomer, most: 180 },
  { kind: 'flats and climbs, 38 blocks, 38 cues', wanted: FLATS_AND_CLIMBS, way: 'newcomer', enter: enterAsNewcomer, most: 120 },
  { kind: 'hills and jumps, 50 blocks, 76 cues', wanted: HILLS_AND_JUMPS, way: 'expert', enter: enterAsExpert, most: 90 },
  { kind: 'flats and climbs, 38 blocks, 38 cues', wanted: FLATS_AND_CLIMBS, way: 'expert', enter: enterAsExpert, most: 60 },
]

for (const { kind, wanted, way, enter, most } of WAYS) {
  test(`${kind}: at most ${most} actions of a ${way}`, async ({ page, context }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write'])
    await countActions(page)
    await openRidewright(page)
    await enter(page, wanted)
    const counts = await countsOf(page)
    await page.screenshot({ path: test.info().outputPath('class.png') })
    console.log(`${kind}, ${way}: ${sumOf(counts)} (${JSON.stringify(counts)})`)
    expectClass(await keptRide(page), wanted)
    expect(sumOf(counts)).toBeLessThanOrEqual(most)
  })
}
