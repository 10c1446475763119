/**
 * `npm run fit:beats FOLDER`: fits the weights by which beats, bars and eights are chosen, to the folder's songs and to
 * songs composed from seeds, and writes them. It prints how well weights fitted to three quarters of the songs do on
 * the rest. The same folder gives the same weights. `--dry` writes nothing.
 */
import { fileURLToPath } from 'node:url'
import { bundled } from './bundled.mjs'
import { corpusFolder } from './corpusFolder.mjs'

const folder = corpusFolder('fit:beats')
const { fitBeats } = await bundled('corpus-fit', './corpus/fit/fitBeats.ts')
const out = process.argv.includes('--dry') ? null : fileURLToPath(new URL('../../src/audio/dsp/', import.meta.url))
await fitBeats(folder, out)
