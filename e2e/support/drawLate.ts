import type { Page } from '@playwright/test'

/**
 * From the next opening on, a page gets its animation frames late, as on a busy machine: what waits for one is not there
 * yet when the next key comes.
 */
export async function drawLate(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const frame = window.requestAnimationFrame.bind(window)
    window.requestAnimationFrame = (draw) => frame(() => setTimeout(() => draw(performance.now()), 250))
  })
}
