import { join } from 'node:path'
import { expect, test } from 'vitest'
import { LARGEST_CAP, LEAST_CAP, readingDistance } from '#features/sheet/legibility.ts'
import { readFont } from '#tests/support/readFont.ts'
import { ROOT, readRepositoryFile } from '#tests/support/repositoryFiles.ts'
import { CAP_RATIO, capHeight, fontSizeFor } from '#units/capHeight.ts'

test('the least type fills 16 minutes of arc at half a metre, never less by rounding', () => {
  expect(LEAST_CAP).toBe(2.33)
  expect(LEAST_CAP).toBeGreaterThanOrEqual(capHeight(0.5, 16))
  expect(LARGEST_CAP).toBeLessThanOrEqual(capHeight(0.7, 20))
})

test('the capital height of an em is the font’s own', () => {
  const [, file] = /url\("(@fontsource[^"]+-latin-wght-normal[^"]+)"\)/.exec(readRepositoryFile('src/ui/fonts.css'))!
  const { capitalHeight, unitsPerEm } = readFont(join(ROOT, 'node_modules', file!))
  expect(CAP_RATIO).toBe(capitalHeight / unitsPerEm)
  expect(fontSizeFor(2.33)).toBeCloseTo(3.488, 3)
})

test('reading distance undoes capital height', () => {
  expect(readingDistance(capHeight(0.73, 16), 16)).toBeCloseTo(0.73, 12)
})
