import type { Page } from '@playwright/test'
import type { Ride } from '#plan/model.ts'
import { openRidewright } from './openRidewright.ts'

/** Opens a ride as its file would be opened from the start page. */
export async function openRide(page: Page, ride: Ride): Promise<void> {
  await openRidewright(page)
  const file = { name: `${ride.id}.ride.json`, mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(ride)) }
  await page.locator('input[type="file"][accept^=".json"]').first().setInputFiles(file)
}
