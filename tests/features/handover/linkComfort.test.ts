import { describe, expect, it } from 'vitest'
import { COMFORTABLE_LINK, isLongLink, mailFor } from '#features/handover/linkComfort.ts'

describe('isLongLink', () => {
  it('calls a link long from the first character past the comfortable length', () => {
    expect(isLongLink(COMFORTABLE_LINK)).toBe(false)
    expect(isLongLink(COMFORTABLE_LINK + 1)).toBe(true)
  })
})

describe('mailFor', () => {
  it('keeps the link whole and the title readable', () => {
    const link = 'https://example.org/rides/#r1.abc_-123'
    const { address, holdsLink } = mailFor('Hügel & Täler', link)
    const { searchParams } = new URL(address)
    expect(holdsLink).toBe(true)
    expect(searchParams.get('subject')).toBe('Ride: Hügel & Täler')
    expect(searchParams.get('body')).toContain(`\r\n${link}\r\n`)
  })

  it('leaves the link to be pasted where a mail program might cut it', () => {
    const link = `https://example.org/#r1.${'a'.repeat(COMFORTABLE_LINK)}`
    const { address, holdsLink } = mailFor('é'.repeat(300), link)
    expect(holdsLink).toBe(false)
    expect(address.length).toBeLessThan(COMFORTABLE_LINK)
    expect(new URL(address).searchParams.get('body')).not.toContain('#r1.')
  })
})
