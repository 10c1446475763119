import { plural } from '#words/forms.ts'

/** What became of saved rides and songs. */
export const shelf = {
  // Rides.
  notListed: 'Your rides couldn’t be listed.',
  notOpened: 'That ride couldn’t be opened.',
  deleted: ({ title }: { title: string }) => `Deleted “${title}”`,
  deletedUnread: 'Deleted',
  notDeleted: 'That ride couldn’t be deleted.',
  restored: ({ title }: { title: string }) => `Restored “${title}”`,
  notRestored: 'The deleted ride couldn’t be restored.',

  // Songs.
  songsNotListed: 'Your songs couldn’t be listed.',
  ridesNotSearched: 'Your rides couldn’t be searched for their songs.',
  savedSong: ({ title }: { title: string }) => `Saved “${title}” to my songs`,
  savedSongs: ({ songs }: { songs: number }) => `Saved ${plural(songs, 'song', 'songs')} to my songs`,
  notAllSaved: 'Some songs couldn’t be saved.',
  removedSong: ({ title, withFile }: { title: string; withFile: boolean }) =>
    `Removed “${title}” from my songs${withFile ? ', and its file from this device' : ''}`,
  songNotRemoved: ({ title }: { title: string }) => `“${title}” couldn’t be removed from my songs.`,
  fileNotSaved: 'This song’s file couldn’t be saved.',
  fileNotRemoved: 'This song’s file couldn’t be removed.',
}
