import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { deflateSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { open, seal } from '#plan/link/envelope.ts'
import { bitWriter } from '#plan/link/format1/bits.ts'
import { SMALL, writeNumber } from '#plan/link/format1/code.ts'
import { columnReader, readColumns } from '#plan/link/format1/columnReader.ts'
import { BrokenColumns } from '#plan/link/format1/columns.ts'
import { COLUMN_COUNT } from '#plan/link/format1/rideLayout.ts'
import { rideInText } from '#plan/link/rideInText.ts'
import type { Ride } from '#plan/model.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'
import { told } from '#tests/support/told.ts'

const ride: Ride = JSON.parse(readFileSync('public/demo/twenty-minute-spark.ride.json', 'utf8'))
const link = encodeLink(ride)

const said = (text: string) => {
  const opened = decodeLink(text)
  return opened.ok ? 'opened' : opened.problems.map((problem) => told(problem.text)).join(' ')
}

const NOT_OURS = 'This isn’t a link to a ride.'
const TOO_NEW = 'This link was made with a newer version. Update to open it.'
const grouped = (count: number) => count.toLocaleString('en-US')

const TRUNCATED = /^The end of this link is missing/
const DAMAGED = 'This link is damaged. Ask for it again.'
const RECASED = 'This link is damaged: an app changed its capital and small letters. Ask for the ride as a file instead.'
const TOO_LONG = 'This link is far longer than any ride, so it wasn’t opened.'
const TOO_LARGE = 'This link holds far more than a ride, so it wasn’t opened.'

describe('a link as it arrives', () => {
  it.each([
    ['bare', link],
    ['as a fragment', `#${link}`],
    ['as an address', `https://rides.example/app/#${link}`],
    ['as an address with a query', `https://rides.example/?lang=en#${link}`],
    ['with white space around it', `\n  ${link}\t\r\n`],
    ['folded by a mail and put into an address', `https://example.org/#${link.slice(0, 40)}%20%0A${link.slice(40)}%3E`],
    ['wrapped by a mail program', link.replace(/(.{76})/g, '$1\r\n')],
    ['in angle brackets', `<https://rides.example/#${link}>`],
    ['in brackets at the end of a sentence', `(https://rides.example/#${link}).`],
  ])('opens: %s', (_, text) => {
    expect(decodeLink(text)).toEqual({ ok: true, ride })
  })

  it.each([
    ['nothing', ''],
    ['an address without a ride', 'https://rides.example/app/'],
    ['another fragment', 'https://rides.example/#settings'],
    ['words', 'see you at six'],
    ['no format', 'r.AAAA'],
    ['format zero', 'r0.AAAA'],
    ['words that end like a head', 'Bring water for 1.5 hours; see r2.d2 and chapter1.'],
    ['a numbered list', 'for\n1. warm up\n2. climb'],
  ])('is refused: %s', (_, text) => {
    expect(said(text)).toBe(NOT_OURS)
  })

  it('is refused where it is no text', () => {
    for (const junk of [undefined, null, 7, {}, [link]]) expect(said(junk as unknown as string)).toBe(NOT_OURS)
  })

  it('says when it comes from a version to come', () => {
    expect(said(link.replace('r1.', 'r2.'))).toBe(TOO_NEW)
    expect(said('r99999.whatever comes')).toBe(TOO_NEW)
  })

  it('says when its end is missing, wherever it was cut, and how much of it', () => {
    expect(said('r1.')).toBe('The end of this link is missing. Copy the whole link and try again.')
    for (let length = 'r1.'.length + 4; length < link.length; length++) {
      const missing = `${grouped(link.length - length)} of its ${grouped(link.length)} characters.`
      expect(said(link.slice(0, length))).toBe(`The end of this link is missing: ${missing} Copy the whole link and try again.`)
    }
  })

  it('says when a letter is wrong, whichever', () => {
    const other = (letter: string) => (letter === 'A' ? 'B' : 'A')
    for (let at = 'r1.'.length + 2; at < link.length; at += 7) {
      const wrong = said(link.slice(0, at) + other(link[at]!) + link.slice(at + 1))
      if (wrong !== DAMAGED) expect(wrong).toMatch(TRUNCATED)
    }
    for (const wrong of ['*', 'é', '🙂', '\ufffd', '=']) expect(said(`${link.slice(0, 40)}${wrong}${link.slice(41)}`)).toBe(DAMAGED)
  })

  it('says so where there is something else in place of its letters', () => {
    for (const junk of ['<script>', '🙂', '#', '?x=y']) expect(said(`#r1.${junk}`)).toBe(DAMAGED)
  })

  it('says when an app changed the case of its letters', () => {
    for (const recased of [link.toLowerCase(), link.toUpperCase()]) {
      for (const text of [recased, `Hi, https://rides.example/#${recased} see you`, recased.slice(0, 200)]) expect(said(text)).toBe(RECASED)
    }
  })

  it('ends where it says, whatever letters follow', () => {
    for (const more of ['AAAA', '_', '__', '-', '-and-more', 'x'.repeat(500)]) expect(decodeLink(link + more)).toEqual({ ok: true, ride })
  })

  it('is the first one that is whole, and the others are counted', () => {
    const other = encodeLink({ ...ride, id: 'other' })
    const text = (...links: string[]) => links.map((each) => `Here: https://rides.example/#${each}`).join('\nor\n')
    expect(rideInText(text(link, other, link))).toStrictEqual({ ok: true, ride, link, others: 1 })
    expect(rideInText(text(link.slice(0, 300), link.replace('r1', 'r2'), other))).toMatchObject({ ok: true, link: other, others: 0 })
    expect(said(text(link.slice(0, 300), link.replace('r1', 'r2')))).toMatch(TRUNCATED)
  })

  it('says when it is too long to be one, before looking into it', () => {
    expect(said(`r1.${'A'.repeat(3_000_000)}`)).toBe(TOO_LONG)
  })
})

describe('a link that means harm', () => {
  /** Columns that are all zero, with texts of the lengths said. */
  const columnsSaying = (...lengths: number[]): number[] => {
    const to = bitWriter()
    for (let column = 0; column < COLUMN_COUNT; column++) to.bits(0, 1)
    for (const length of lengths) writeNumber(to, length, SMALL)
    return to.bytes()
  }
  const crafted = (columns: number[], texts: Uint8Array) => seal(Uint8Array.from([...columns, ...deflateSync(texts, { level: 9 })]))

  it('says it is larger than any ride: nothing is unpacked', () => {
    expect(said(crafted(columnsSaying(2 ** 40, 0), new Uint8Array(8)))).toBe(TOO_LARGE)
  })

  it('unpacks to more than it says: unpacking stops', () => {
    expect(said(crafted(columnsSaying(10, 0), new Uint8Array(20_000_000)))).toBe(DAMAGED)
    expect(said(crafted(columnsSaying(10, 0), new Uint8Array(11)))).toBe(DAMAGED)
  })

  it('unpacks to less than it says', () => {
    expect(said(crafted(columnsSaying(10, 2), new Uint8Array(11)))).toBe(DAMAGED)
  })

  it('multiplies: a few bytes that stand for values without end', () => {
    const { take } = columnReader({ columns: [() => 0], textLengths: [0, 0], end: 0 }, new Uint8Array())
    for (let i = 0; i < 2_000_000; i++) take(0)
    expect(() => take(0)).toThrow(BrokenColumns)
    const to = bitWriter()
    to.bits(0b1_01_0, 4)
    writeNumber(to, 2 ** 40, SMALL)
    to.bits(0, 6)
    expect(() => readColumns(1, Uint8Array.from(to.bytes()))).toThrow(BrokenColumns)
  })

  it('is whole but holds no ride', () => {
    expect(said(seal(new Uint8Array(0)))).toBe(DAMAGED)
    expect(said(seal(new TextEncoder().encode(JSON.stringify(ride))))).toBe(DAMAGED)
  })

  it('is whole and holds a ride the rules refuse', () => {
    const wrong = { ...ride, sections: ride.sections.map((section) => ({ ...section, id: 's1' })) }
    expect(said(encodeLink(wrong))).toContain('Song 2: the id is used twice')
  })

  it('is any bytes under a right checksum: a ride or a reason, never an error', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        expect(said(seal(bytes))).toMatch(/^opened$|\.$/)
      }),
      { numRuns: 500 },
    )
  })

  it('is a real one changed under a right checksum: a ride or a reason, never an error', () => {
    const opened = open(link)
    const payload = opened.ok ? opened.payload : new Uint8Array()
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(payload.length - 1), fc.nat(255)), { minLength: 1, maxLength: 6 }), (changes) => {
        const changed = payload.slice()
        for (const [at, byte] of changes) changed[at] = byte
        expect(said(seal(changed))).toMatch(/^opened$|\.$/)
      }),
      { numRuns: 500 },
    )
  })

  it('is any text, or a real one cut, joined and muddled', () => {
    const piece = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 20 }),
      fc.nat(link.length).chain((from) => fc.nat(200).map((length) => link.slice(from, from + length))),
    )
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 6 }), fc.constantFrom('', 'r1.', '#r1.', 'r2.'), (pieces, start) => {
        expect(said(start + pieces.join(''))).toMatch(/\.$/)
      }),
      { numRuns: 500 },
    )
  })
})
