import { describe, expect, it } from 'vitest'
import { COMFORTABLE_LINK, isLongLink, mailAddress } from '#features/handover/linkComfort.ts'

describe('isLongLink', () => {
  it('calls a link long from the first character past the comfortable length', () => {
    expect(isLongLink(COMFORTABLE_LINK)).toBe(false)
    expect(isLongLink(COMFORTABLE_LINK + 1)).toBe(true)
  })
})

describe('mailAddress', () => {
  it('keeps the link whole and the title readable', () => {
    const link = 'https://example.org/rides/#ride=abc_-123'
    const address = new URL(mailAddress('Hügel & Täler', link)!)
    expect(address.searchParams.get('subject')).toBe('Ride: Hügel & Täler')
    expect(address.searchParams.get('body')).toContain(`\r\n${link}\r\n`)
  })

  it('gives none where a mail program might cut it', () => {
    expect(mailAddress('long', `https://example.org/#ride=${'a'.repeat(COMFORTABLE_LINK)}`)).toBeNull()
  })
})
