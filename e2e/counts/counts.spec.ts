import type { Page } from '@playwright/test'
import { openRidewright } from '#e2e/support/openRidewright.ts'
import { expect, test } from '#e2e/support/test.ts'
import { type Block, isSet, type Ride, type Section } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { blockFromPattern, PATTERNS } from '#plan/patterns/patterns.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { FLATS_AND_CLIMBS, FROM_BOTH, HILLS_AND_JUMPS, type WantedClass } from './classes.ts'
import { enterAsExpert, enterAsNewcomer, enterFromKept } from './entering.ts'
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

/** The class as a ride that has been planned before. */
function asRide({ title, songs }: WantedClass): Ride {
  let ids = 0
  const newId = () => {
    ids += 1
    return `${title.replaceAll(' ', '')}${ids}`
  }
  const ride: Ride = { ...blankRide({ newId, title }), slotMinutes: 45 }
  const sections = songs.map((song): Section => {
    const [minutes, seconds] = song.length.split(':') as [string, string]
    const grid = gridOfTempo(song.bpm)
    const section: Section = {
      id: newId(),
      leadInSeconds: 0,
      song: { id: newId(), title: song.title, grid, lengthSeconds: Number(minutes) * 60 + Number(seconds), strikesPerBeat: 1 },
      blocks: [],
    }
    const blocks = song.blocks.map((wanted) => {
      const pattern = PATTERNS.find(({ id }) => id === wanted.pattern)!
      const block = blockFromPattern(pattern, ride, section, newId)
      const effort = wanted.effort ?? pattern.effort.from
      return { ...block, length: { counts: 8 * (wanted.eights ?? pattern.eights) }, effort: { from: effort, to: effort } }
    })
    return { ...section, blocks }
  })
  return { ...ride, sections }
}

test('a class of songs that were planned before: at most 40 actions', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  await countActions(page)
  await openRidewright(page)
  for (const wanted of [HILLS_AND_JUMPS, FLATS_AND_CLIMBS]) {
    const file = { name: 'kept.ride.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(asRide(wanted))) }
    await page.locator('input[type="file"][accept^=".json"]').first().setInputFiles(file)
    await expect(page.locator('.song-head')).toHaveCount(wanted.songs.length)
    await expect(page.getByText('saved', { exact: true })).toBeVisible()
    await page.getByRole('link', { name: 'my rides' }).click()
  }
  // What was done until here is only how the kept rides came to be there.
  await page.reload()
  await enterFromKept(page, FROM_BOTH)
  const counts = await countsOf(page)
  await page.screenshot({ path: test.info().outputPath('class.png') })
  console.log(`${FROM_BOTH.songs.length} songs with their plans: ${sumOf(counts)} (${JSON.stringify(counts)})`)
  const ride = await keptRide(page)
  const made = ride.sections.map(({ blocks }) => blocks.map((item) => (isSet(item) ? null : withoutTotal(facts(item)))))
  expect(made).toEqual(wantedFacts(FROM_BOTH).map((song) => song.map(withoutTotal)))
  expect(sumOf(counts)).toBeLessThanOrEqual(40)
})

/** Totals are shifted so that riders come in as they did. */
const withoutTotal = ({ at: _, ...rest }: ReturnType<typeof facts>) => rest
