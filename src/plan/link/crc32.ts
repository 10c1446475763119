/** The polynomial of CRC-32 as in ISO/IEC 13239 and ITU-T V.42, bits reversed. */
const POLYNOMIAL = 0xedb88320

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1
  return rest
})

/** Checksum of bytes, 0 to 2³² − 1: any change of up to 32 neighbouring bits shows. */
export function crc32(bytes: Uint8Array): number {
  let rest = 0xffffffff
  for (const byte of bytes) rest = TABLE[(rest ^ byte) & 0xff]! ^ (rest >>> 8)
  return ~rest >>> 0
}
