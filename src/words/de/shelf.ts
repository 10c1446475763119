import type { en } from '#words/en/index.ts'
import { plural } from '#words/forms.ts'

export const shelf: typeof en.shelf = {
  notListed: 'Deine Rides konnten nicht aufgelistet werden.',
  notOpened: 'Dieser Ride konnte nicht geöffnet werden.',
  deleted: ({ title }) => `„${title}“ gelöscht`,
  deletedUnread: 'Gelöscht',
  notDeleted: 'Dieser Ride konnte nicht gelöscht werden.',
  restored: ({ title }) => `„${title}“ wiederhergestellt`,
  notRestored: 'Der gelöschte Ride konnte nicht wiederhergestellt werden.',

  songsNotListed: 'Deine Songs konnten nicht aufgelistet werden.',
  ridesNotSearched: 'Deine Rides konnten nicht nach ihren Songs durchsucht werden.',
  savedSong: ({ title }) => `„${title}“ in meinen Songs gespeichert`,
  savedSongs: ({ songs }) => `${plural(songs, 'Song', 'Songs')} in meinen Songs gespeichert`,
  notAllSaved: 'Einige Songs konnten nicht gespeichert werden.',
  removedSong: ({ title, withFile }) => `„${title}“ aus meinen Songs entfernt${withFile ? ', die Datei von diesem Gerät gelöscht' : ''}`,
  songNotRemoved: ({ title }) => `„${title}“ konnte nicht aus meinen Songs entfernt werden.`,
  fileNotSaved: 'Die Datei dieses Songs konnte nicht gespeichert werden.',
  fileNotRemoved: 'Die Datei dieses Songs konnte nicht entfernt werden.',
}
