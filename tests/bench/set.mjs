/**
 * `npm run bench:set`: twenty composed songs of four minutes are given to the built page's shelf at once. Prints how
 * long hearing them takes and how long the page was busy at a time meanwhile. It reports and never fails on a figure.
 */
import { bundled } from './bundled.mjs'

const { benchSet } = await bundled('set', './set/benchSet.ts')
await benchSet()
