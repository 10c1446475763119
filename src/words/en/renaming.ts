/** Names that are changed where they stand on the stage. */
export const renaming = {
  rename: 'rename',
  renameDo: 'rename right on the timeline',
  twoPressesDo: 'on the name of a song or block: rename it',
  titleNeeded: 'A song needs a title.',
  label: ({ name }: { name: string }) => `name of “${name}”`,
}
