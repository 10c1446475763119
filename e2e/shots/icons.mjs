/** `npm run icons`: draws the PNG icons from the SVG, in the sizes that home screens ask for. */
import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { chromium } from '@playwright/test'
import { CONTAINER_FLAGS, findBrowser } from '#ci/find-browser.mjs'

const ICONS = fileURLToPath(new URL('../../public/icons/', import.meta.url))

const drawing = await readFile(`${ICONS}icon.svg`, 'utf8')
const browser = await chromium.launch({ ...(await findBrowser()), args: CONTAINER_FLAGS })
const page = await browser.newPage()
for (const size of [180, 192, 512]) {
  await page.setViewportSize({ width: size, height: size })
  await page.setContent(`<style>* { margin: 0 } svg { display: block; width: 100vw; height: 100vh }</style>${drawing}`)
  await page.screenshot({ path: `${ICONS}icon-${size}.png` })
}
await browser.close()
