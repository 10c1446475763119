/**
 * Longest address that is shown as a QR code, in characters: about what version 22 holds
 * (105 × 105 modules), beyond which a telephone has to be held still and close. Common practice, no source.
 */
export const COMFORTABLE_QR = 1000

/** Whether a code of this address scans comfortably. */
export const scansWell = (address: string): boolean => address.length <= COMFORTABLE_QR

/** Rows of modules, true for dark. */
export type Modules = readonly (readonly boolean[])[]

/** The dark modules as one path on a grid of a unit a module: a rectangle for every run of them in a row. */
export function darkPath(modules: Modules): string {
  const runs: string[] = []
  modules.forEach((row, y) => {
    for (let x = 0; x < row.length; x++) {
      if (!row[x]) continue
      const from = x
      while (row[x + 1]) x += 1
      runs.push(`M${from} ${y}h${x + 1 - from}v1h${from - x - 1}z`)
    }
  })
  return runs.join('')
}
