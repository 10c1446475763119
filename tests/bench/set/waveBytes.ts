/** A wave file of one channel and 16 bits. */
export function waveBytes(samples: Float32Array, sampleRate: number): Uint8Array {
  const bytes = new Uint8Array(44 + 2 * samples.length)
  const view = new DataView(bytes.buffer)
  const write = (at: number, text: string) => {
    for (let i = 0; i < text.length; i++) view.setUint8(at + i, text.charCodeAt(i))
  }
  write(0, 'RIFF')
  view.setUint32(4, bytes.length - 8, true)
  write(8, 'WAVEfmt ')
  view.setUint32(16, 16, true)
  view.setUint16(20, 1, true)
  view.setUint16(22, 1, true)
  view.setUint32(24, sampleRate, true)
  view.setUint32(28, 2 * sampleRate, true)
  view.setUint16(32, 2, true)
  view.setUint16(34, 16, true)
  write(36, 'data')
  view.setUint32(40, 2 * samples.length, true)
  for (let i = 0; i < samples.length; i++) view.setInt16(44 + 2 * i, Math.round(32_767 * Math.max(-1, Math.min(1, samples[i]!))), true)
  return bytes
}
