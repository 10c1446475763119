import { strFromU8, unzipSync } from 'fflate'
import { expect, it } from 'vitest'
import { exportFile } from '#app/exports/exportFile.ts'
import { computeRide } from '#engine/computeRide.ts'
import { EXPORTS } from '#features/sheet/exportKinds.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { rightToLeftRide } from '#tests/support/sheetRides.ts'
import { cameraClass } from '#tests/support/soundClasses.ts'

const MOMENT = { day: '2026-11-26', startsAt: '12:10', now: Date.UTC(2026, 10, 25, 8, 30), today: '25 November 2026' }

// The files a ride is given out as, kept as text: what a change does to any of them is seen there. `-u` keeps the new ones once
// they were read.
it.each(EXPORTS)('a ride as $label is what it was', async ({ id }) => {
  const files = [demoRide('spark'), rightToLeftRide(), cameraClass()].map((ride) => {
    const { data } = exportFile(id, ride, computeRide(ride), MOMENT)
    if (typeof data === 'string') return data
    const packed = Object.entries(unzipSync(data))
    return packed.map(([name, bytes]) => `${name}\n${strFromU8(bytes)}`).join('\n')
  })
  await expect(files.join('\n\n')).toMatchFileSnapshot(`kept/${id}.txt`)
})
