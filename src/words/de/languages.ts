import type { en } from '#words/en/index.ts'

export const languages: typeof en.languages = {
  label: 'Sprache',
  notFetched: 'Diese Sprache konnte nicht geladen werden. Prüfe die Verbindung und versuch es noch einmal.',
}
