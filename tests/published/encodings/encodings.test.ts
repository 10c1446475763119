import { expect } from 'vitest'
import { fromBase64url, toBase64url } from '#plan/link/base64url.ts'
import { crc32 } from '#plan/link/crc32.ts'
import { inflateExactly } from '#plan/link/format1/inflateExactly.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

const bytesOfText = (text: string) => new TextEncoder().encode(text)
const bytesOfHex = (hex: string) => Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16))

/** The text for bytes, after making sure that it leads back to them. */
function thereAndBack(bytes: Uint8Array): string {
  const text = toBase64url(bytes)
  expect(fromBase64url(text)).toEqual(bytes)
  return text
}

/** Plain base64 is the same text with two other letters and padding. */
const padded = (text: string) =>
  text
    .replaceAll('-', '+')
    .replaceAll('_', '/')
    .padEnd(Math.ceil(text.length / 4) * 4, '=')

checkRows('encodings', rows, {
  b64: ({ text }: { text: string }) => padded(thereAndBack(bytesOfText(text))),
  b64url: ({ hex }: { hex: string }) => thereAndBack(bytesOfHex(hex)),
  deflate: ({ hex }: { hex: string }, { expected }) => new TextDecoder().decode(inflateExactly(String(expected).length, bytesOfHex(hex))),
  crc32: ({ text }: { text: string }) => crc32(bytesOfText(text)).toString(16),
})
