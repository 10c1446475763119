import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Locator, Page } from '@playwright/test'

/** Where the four clips of the project's own song are, six seconds each. */
export const CLIPS = fileURLToPath(new URL('../../tests/audio/clips/', import.meta.url))

/** A file as it is dropped: its bytes in base64, as only text goes into the page. */
export interface Dropped {
  name: string
  bytes: string
}

/** One of the clips, under its own name or another. */
export const clip = async (file: string, name = basename(file)): Promise<Dropped> => ({
  name,
  bytes: (await readFile(`${CLIPS}${file}`)).toString('base64'),
})

export const textFile = (name: string, text: string): Dropped => ({ name, bytes: Buffer.from(text).toString('base64') })

/** Files let go over a thing, as a file manager does it. */
export async function dropFiles(page: Page, over: Locator, files: readonly Dropped[]): Promise<void> {
  const dataTransfer = await page.evaluateHandle((given) => {
    const data = new DataTransfer()
    for (const { name, bytes } of given) {
      data.items.add(new File([Uint8Array.from(atob(bytes), (letter) => letter.charCodeAt(0))], name))
    }
    return data
  }, files)
  await over.dispatchEvent('dragover', { dataTransfer })
  await over.dispatchEvent('drop', { dataTransfer })
}

/** A wave file of a hum, so many seconds long. */
export function hum(name: string, seconds: number): Dropped {
  const rate = 8000
  const samples = Buffer.alloc(seconds * rate)
  for (let i = 0; i < samples.length; i++) samples[i] = 128 + Math.round(90 * Math.sin((2 * Math.PI * 110 * i) / rate))
  const head = Buffer.alloc(44)
  head.write('RIFF', 0)
  head.writeUInt32LE(36 + samples.length, 4)
  head.write('WAVEfmt ', 8)
  head.writeUInt32LE(16, 16)
  head.writeUInt16LE(1, 20)
  head.writeUInt16LE(1, 22)
  head.writeUInt32LE(rate, 24)
  head.writeUInt32LE(rate, 28)
  head.writeUInt16LE(1, 32)
  head.writeUInt16LE(8, 34)
  head.write('data', 36)
  head.writeUInt32LE(samples.length, 40)
  return { name, bytes: Buffer.concat([head, samples]).toString('base64') }
}
