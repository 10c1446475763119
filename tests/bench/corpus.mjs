/**
 * `npm run test:corpus FOLDER`: how well beats are found in songs whose beats are known. The folder holds
 * `truth.json` (for each song: id, file, bpm, meter, beats, downbeats and, where known, phrases8, in seconds) and its
 * wave files of one channel and 16 bits; RIDEWRIGHT_CORPUS names it as well. `--each` lists every song. `npm run
 * bench:beats FOLDER` adds general-purpose tempo libraries in the same run, and the browser's worker. It reports, and
 * fails on nothing but a folder that is not there.
 */
import { bundled } from './bundled.mjs'
import { corpusFolder } from './corpusFolder.mjs'

const words = process.argv.slice(2)
const folder = corpusFolder('test:corpus')
const { scoreCorpus } = await bundled('corpus', './corpus/score.ts')
await scoreCorpus(folder, { libraries: words.includes('--libraries'), each: words.includes('--each') })
