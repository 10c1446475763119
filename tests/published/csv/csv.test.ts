import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { writeCsv } from '#formats/csv/writeCsv.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

checkRows('CSV', rows, { 'csv.q': ({ field }: { field: string }) => writeCsv([[field]]).replace(/\r\n$/, '') })

const readBack = (text: string): string[][] => parse(text, { record_delimiter: '\r\n' })

describe('rows read back by an independent parser (RFC 4180)', () => {
  test('every row ends in CRLF, the last one too', () => expect(writeCsv([['a', 'b'], ['c']])).toBe('a,b\r\nc\r\n'))

  test('any text comes back, whatever it holds', () => {
    const plain = fc.string({ unit: 'grapheme' }).map((text) => `.${text}`)
    fc.assert(
      fc.property(fc.array(fc.tuple(plain, plain, plain), { minLength: 1 }), (table) => {
        expect(readBack(writeCsv(table))).toEqual(table)
      }),
    )
  })
})

describe('spreadsheets run nothing that a song is called (common practice)', () => {
  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1'])('%j is text', (text) => {
    expect(readBack(writeCsv([[text]]))).toEqual([[`'${text}`]])
  })

  test('a number stays a number, also below zero; what is none is left empty', () => {
    expect(writeCsv([[-1.25, 0, Number.NaN, undefined, Number.POSITIVE_INFINITY, 'A−B']])).toBe('-1.25,0,,,,A−B\r\n')
  })
})
