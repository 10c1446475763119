import { readFileSync } from 'node:fs'
import { brotliDecompressSync } from 'node:zlib'

export interface FontFacts {
  unitsPerEm: number
  /** In font units. */
  capitalHeight: number
  /** Code points the font has a glyph for. */
  characters: Set<number>
}

const HEADER_BYTES = 48
/** Tables are named by number in a WOFF2 directory; these are the ones read here, by their place in its list (W3C WOFF2, section 4.1). */
const TABLE_NAMES: Record<number, string> = { 0: 'cmap', 1: 'head', 6: 'OS/2' }
const GLYF = 10
const LOCA = 11
const NAMED_IN_FULL = 63

/** Reads the little of a WOFF2 file that tells what it can show. Source of the layout: W3C WOFF File Format 2.0 and the OpenType tables cmap, head, OS/2. */
export function readFont(path: string): FontFacts {
  const file = readFileSync(path)
  const tables = readDirectory(file)
  const head = tables('head')
  return { unitsPerEm: head.readUInt16BE(18), capitalHeight: tables('OS/2').readInt16BE(88), characters: readCharacters(tables('cmap')) }
}

function readDirectory(file: Buffer): (name: string) => Buffer {
  let position = HEADER_BYTES
  let start = 0
  const found = new Map<string, [from: number, to: number]>()
  const base128 = () => {
    let value = 0
    for (;;) {
      const byte = file[position++]!
      value = value * 128 + (byte & 0x7f)
      if ((byte & 0x80) === 0) return value
    }
  }
  for (let count = file.readUInt16BE(12); count > 0; count--) {
    const flags = file[position++]!
    const tag = flags & 0x3f
    if (tag === NAMED_IN_FULL) position += 4
    let length = base128()
    const isOutline = tag === GLYF || tag === LOCA
    const isTransformed = isOutline ? flags >> 6 === 0 : flags >> 6 !== 0
    if (isTransformed) length = base128()
    const name = TABLE_NAMES[tag]
    if (name) found.set(name, [start, start + length])
    start += length
  }
  const data = brotliDecompressSync(file.subarray(position, position + file.readUInt32BE(20)))
  return (name) => data.subarray(...found.get(name)!)
}

/** Ranges of a cmap in formats 4 (two-byte) and 12 (four-byte code points), the ones fonts for the web have. */
function readCharacters(cmap: Buffer): Set<number> {
  const characters = new Set<number>()
  const add = (from: number, to: number) => {
    for (let code = from; code <= to; code++) characters.add(code)
  }
  for (let index = 0; index < cmap.readUInt16BE(2); index++) {
    const subtable = cmap.subarray(cmap.readUInt32BE(4 + index * 8 + 4))
    const format = subtable.readUInt16BE(0)
    if (format === 4) {
      const segments = subtable.readUInt16BE(6)
      for (let segment = 0; segment < segments; segment += 2)
        add(subtable.readUInt16BE(16 + segments + segment), subtable.readUInt16BE(14 + segment))
    } else if (format === 12) {
      for (let group = 0; group < subtable.readUInt32BE(12); group++)
        add(subtable.readUInt32BE(16 + group * 12), subtable.readUInt32BE(20 + group * 12))
    }
  }
  // The last segment of format 4 always ends in 0xFFFF, which is no character.
  characters.delete(0xffff)
  return characters
}
