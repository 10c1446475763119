import jsqr from 'jsqr'
import { describe, expect, it } from 'vitest'
import { COMFORTABLE_QR, darkPath, scansWell } from '#features/handover/qrComfort.ts'
import { qrModules } from '#formats/qr/qrModules.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { smallRide } from '#tests/support/smallRide.ts'

/** Pixels of a side of a module: what a small code takes on a screen. */
const SCALE = 3

/** Read by another's decoder, from pixels. */
function readPixels(modules: ReturnType<typeof qrModules>): string | undefined {
  const size = modules.length * SCALE
  const pixels = new Uint8ClampedArray(size * size * 4).fill(255)
  for (let y = 0; y < size; y++)
    for (let x = 0; x < size; x++)
      if (modules[Math.floor(y / SCALE)]![Math.floor(x / SCALE)]) pixels.fill(0, (y * size + x) * 4, (y * size + x) * 4 + 3)
  return jsqr(pixels, size, size)?.data
}

describe('a QR code', () => {
  it.each([
    ['a word', 'Lantern'],
    ['a link of a small ride', `https://rides.example/#${encodeLink(smallRide())}`],
    ['the longest that is shown', 'https://rides.example/#r1.aZ_-'.padEnd(COMFORTABLE_QR, '0aB-_9')],
  ])('gives back %s to a reader that is not ours', (_, text) => {
    expect(readPixels(qrModules(text))).toBe(text)
  })

  it('stays within version 22 up to the length that is shown', () => {
    const version = (modules: ReturnType<typeof qrModules>) => (modules.length - 8 - 17) / 4
    expect(version(qrModules('a'.repeat(COMFORTABLE_QR)))).toBeLessThanOrEqual(22)
    expect(scansWell('a'.repeat(COMFORTABLE_QR))).toBe(true)
    expect(scansWell('a'.repeat(COMFORTABLE_QR + 1))).toBe(false)
  })

  it('has four light modules around it', () => {
    const modules = qrModules('Lantern')
    for (const edge of [0, 1, 2, 3, modules.length - 4, modules.length - 1]) {
      expect(modules[edge]!.includes(true)).toBe(false)
      expect(modules.some((row) => row[edge])).toBe(false)
    }
  })

  it('is drawn as runs of dark modules', () => {
    expect(darkPath([[false, true, true], [true, false, true], []])).toBe('M1 0h2v1h-2zM0 1h1v1h-1zM2 1h1v1h-1z')
  })
})
