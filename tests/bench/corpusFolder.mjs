import { existsSync } from 'node:fs'
import { join } from 'node:path'

/** The folder of songs whose beats are known that a script is given, as its first word or as RIDEWRIGHT_CORPUS; ends the script without one. */
export function corpusFolder(/** @type {string} */ script) {
  const folder = process.argv.slice(2).find((word) => !word.startsWith('--')) ?? process.env.RIDEWRIGHT_CORPUS
  if (folder && existsSync(join(folder, 'truth.json'))) return folder
  console.error(`Name a folder with truth.json and its songs: npm run ${script} FOLDER, or RIDEWRIGHT_CORPUS=FOLDER.`)
  process.exit(1)
}
