import { fuzz } from './fuzz.ts'

/** Cases at a time, so that something is seen to happen. */
const BATCH = 5000

/** The long run: so many cases from a number on; prints what became of them and gives whether all was well. */
export default async function longRun(cases: number, from: number): Promise<boolean> {
  const all = { opened: 0, refused: 0, broken: [] as Awaited<ReturnType<typeof fuzz>>['broken'] }
  let slowest: Awaited<ReturnType<typeof fuzz>>['slowest'] = []
  for (let done = 0; done < cases; done += BATCH) {
    const outcome = await fuzz(from + done, Math.min(BATCH, cases - done))
    all.opened += outcome.opened
    all.refused += outcome.refused
    all.broken.push(...outcome.broken)
    slowest = [...slowest, ...outcome.slowest].sort((a, b) => b.milliseconds - a.milliseconds).slice(0, 5)
    console.log(
      `${Math.min(done + BATCH, cases)} of ${cases}: ${all.opened} opened, ${all.refused} refused with a reason, ${all.broken.length} broken`,
    )
  }
  console.log('\nslowest')
  for (const { seed, milliseconds, what } of slowest) console.log(`  ${milliseconds.toFixed(0).padStart(6)} ms  ${what} ${seed}`)
  for (const { seed, what } of all.broken.slice(0, 20)) console.log(`broken: case ${seed}: ${what}`)
  return all.broken.length === 0
}
