import { effort, number, plural } from '#words/forms.ts'

/** The shell: the head of the page, notices, and what is announced everywhere. */

/** Whether the open ride is saved, where room is short. */
const SAVED = {
  saved: 'saved',
  oneCopy: 'saved, one copy only',
  saving: 'saving…',
  typing: 'typing, not saved yet',
  failed: 'not saved',
  deleted: 'deleted elsewhere',
  demo: 'sample, not saved yet',
}

const SAVED_MEANS = {
  saved: 'This ride is saved on this device.',
  oneCopy:
    'Rides are saved twice in this browser, and one of the two places isn’t taking anything right now. It tries again every few seconds.',
  saving: undefined,
  typing: 'What’s in the field counts once you leave it or press Enter; until then it is kept as you type.',
  failed: undefined,
  deleted: 'Another window deleted this ride. It’s open here and saved nowhere.',
  demo: 'Your first change saves it as your own ride.',
}

const THEMES = { auto: 'system', light: 'light', dark: 'dark' }

export const app = {
  // The head of the page.
  places: 'places',
  theme: 'color theme',
  themeName: ({ theme }: { theme: keyof typeof THEMES }) => THEMES[theme],
  savedState: ({ saved }: { saved: keyof typeof SAVED }) => SAVED[saved],
  savedMeans: (saved: keyof typeof SAVED_MEANS): string | undefined => SAVED_MEANS[saved],
  readOnly: 'read-only',
  classLength: ({ level, minutes }: { level: string; minutes: number }) => `${level} · ${number(minutes)} min`,
  reading: ({ count }: { count: number }) => `reading ${plural(count, 'song', 'songs')}`,
  toSongs: 'to my songs',
  skip: 'skip to the page',
  opening: 'opening…',
  shortcutsNotFetched: 'The list of shortcuts could not be loaded. Press again when you’re back online.',

  // Another bike.
  shownOn: 'shown on',
  anotherBike: 'another bike',
  shownOnBike: ({ bike }: { bike: string }) => `Shown on “${bike}”.`,
  shownOnMeans: ({ own }: { own: string }) =>
    `Resistance is converted to about the same feel on this bike, and checks about the knob use it. Your edits, fixes, and cues stay in the scale of the ride’s own bike, “${own}”.`,
  typicalBike: ({ bike }: { bike: string }) => `${bike} (typical)`,

  // Announcements.
  undone: ({ change }: { change: string }) => `Undone: ${change}`,
  redone: ({ change }: { change: string }) => `Redone: ${change}`,
  /** Undo or redo that changes nothing here, because another window did. */
  overruled: ({ change }: { change: string }) => `Changed in another window since: ${change}`,

  // Notices.
  dismiss: 'dismiss',
  deleted: ({ title }: { title: string }) => `“${title}” is deleted.`,
  restore: 'restore',
  keepDeleted: 'keep it',
  backToDraft: 'The text that was in a field when the page closed is back in it. It counts once you press Enter there.',
  backupDue: ({ count, everMade }: { count: number; everMade: boolean }) =>
    `${plural(count, 'ride', 'rides')} ${
      everMade ? 'have changed since your last backup' : 'are saved here with no backup yet'
    }. “Save a backup” on this page puts everything into one file.`,

  // Files dropped on the page.
  nothingKept: 'This window can’t save anything (private browsing?), so no songs.',
  oneRideAtATime: ({ names }: { names: string }) => `Only one ride opens at a time; skipped ${names}.`,
  oneListAtATime: ({ names }: { names: string }) => `Only one list is read at a time; skipped ${names}.`,
  openSongs: 'open my songs',
  listRead: ({ name, count }: { name: string; count: number }) => `“${name}” ${holds(count)}`,
  listWaits: ({ name, count }: { name: string; count: number }) => `“${name}” ${holds(count)}; it’s waiting in my songs.`,
  songsComing: ({ count }: { count: number }) =>
    count === 1 ? '1 song goes to my songs once it’s read.' : `${number(count)} songs go to my songs as they’re read.`,
  skippedFile: ({ name }: { name: string }) => `Skipped “${name}”: not a ride, music, or a list.`,
  skippedFiles: ({ count }: { count: number }) => `Skipped ${number(count)} files: not rides, music, or lists.`,
  /** Names of files, of which not all are told. */
  filesAndMore: ({ names, more }: { names: readonly string[]; more: number }) => `${names.join(', ')}, and ${number(more)} more`,

  // A screen that broke.
  broken: 'Something went wrong here.',
  brokenMeans:
    'Your ride isn’t lost: it’s still in memory, and the last saved version is on this device. Download a copy first, then try again.',
  download: 'download the ride',
  reload: 'reload',
  downloaded: 'The file is in your downloads.',
  nothingToDownload: 'No ride was open, so there’s nothing to download.',
  brokenReason: ({ reason }: { reason: string }) => `Details: ${reason}`,

  // Fields and controls anywhere.
  close: 'close',
  effortOf: ({ level }: { level: number }) => `${effort(level)} of 10`,
  /** Of several things whose values differ. */
  mixed: 'mixed',
  find: 'find',
}

const holds = (count: number): string => (count === 0 ? 'has no songs we can read' : `is a list of ${plural(count, 'song', 'songs')}`)
