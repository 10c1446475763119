import { describe, expect, it } from 'vitest'
import { linkAddress } from '#features/handover/linkAddress.ts'

describe('linkAddress', () => {
  it('keeps the page and replaces what stood behind it', () => {
    expect(linkAddress('https://example.org/a/?x=1#/handover/r1', 'r1.TEXT')).toBe('https://example.org/a/?x=1#r1.TEXT')
    expect(linkAddress('https://example.org/', 'r1.TEXT')).toBe('https://example.org/#r1.TEXT')
  })
})
