import type { en } from '#words/en/index.ts'

/** Namen, die auf der Bühne an Ort und Stelle geändert werden. */
export const renaming: typeof en.renaming = {
  rename: 'umbenennen',
  renameDo: 'direkt auf der Zeitachse umbenennen',
  twoPressesDo: 'auf dem Namen eines Songs oder Blocks: umbenennen',
  titleNeeded: 'Ein Song braucht einen Titel.',
  label: ({ name }) => `Name von „${name}“`,
}
