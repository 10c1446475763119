import type { Page } from '@playwright/test'
import type { Ride } from '#plan/model.ts'
import { makeRecord } from '#storage/rideRecord.ts'

/** Puts rides on the shelf of an open page as if each had been saved a day before the next; the page reads them at its next load. */
export async function keepRides(page: Page, rides: readonly Ride[], last = Date.UTC(2026, 9, 1, 12)): Promise<void> {
  const records = rides.map((ride, index) => makeRecord(ride, JSON.stringify(ride), 1, last - (rides.length - 1 - index) * 86_400_000))
  await page.evaluate(
    (values) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('ridewright')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const writing = opening.result.transaction('rides', 'readwrite')
          for (const value of values) writing.objectStore('rides').put(value, value.id)
          writing.onerror = () => reject(writing.error)
          writing.oncomplete = () => {
            opening.result.close()
            resolve()
          }
        }
      }),
    records,
  )
}
