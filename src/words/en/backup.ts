import { and, chosen, day, grouped, plural } from '#words/forms.ts'

/** Everything on this device in one file, and the way back. */

const KINDS = {
  ride: 'rides',
  version: 'versions',
  profile: 'bikes, riders, and studio rules',
  class: 'classes taught',
  song: 'songs',
}

const files = (count: number) => plural(count, 'sound file', 'sound files')

export const backup = {
  title: 'backup',
  about:
    'All rides with their private notes, all versions, bikes, riders, studio rules, and patterns, songs, your own form cues, and the log, in one file. Before restoring, you’ll see what would change.',
  soundFilesNotIn: ({ count }: { count: number }) =>
    `Not in it: ${files(count)} you keep here. Keep ${chosen(count, { one: 'it', other: 'them' })} somewhere else too. Dropped on the page, each finds its song again, on another device as well.`,
  restore: 'restore a backup…',

  // What a backup holds, as it is made
  rides: ({ count }: { count: number }) => plural(count, 'ride', 'rides'),
  versions: ({ count }: { count: number }) => plural(count, 'version', 'versions'),
  profiles: ({ count }: { count: number }) =>
    plural(count, 'bike, rider, rule, or pattern profile', 'bike, rider, rule, and pattern profiles'),
  classes: ({ count }: { count: number }) => `${plural(count, 'class', 'classes')} taught`,
  songs: ({ count }: { count: number }) => plural(count, 'song', 'songs'),
  holds: ({ parts, unreadable, soundFiles }: { parts: readonly string[]; unreadable: number; soundFiles: number }) =>
    [
      `${and(parts)}.`,
      ...(unreadable === 0
        ? []
        : [`${plural(unreadable, 'ride', 'rides')} couldn’t be read and ${chosen(unreadable, { one: 'is', other: 'are' })} not in it.`]),
      ...(soundFiles === 0 ? [] : [`${files(soundFiles)} kept here ${chosen(soundFiles, { one: 'is', other: 'are' })} not in it.`]),
    ].join(' '),
  notMade: 'The backup couldn’t be made.',

  // What restoring it would change
  dialog: 'restore a backup',
  leave: 'cancel',
  nothingToRestore: 'nothing to restore',
  restoreCount: ({ count }: { count: number }) => `restore ${grouped(count)}`,
  contents: ({ file, entries, same }: { file: string; entries: number; same: number }) =>
    `“${file}” holds ${plural(entries, 'entry', 'entries')}${same === 0 ? '' : `, ${grouped(same)} of them the same as here`}. Restoring deletes nothing.`,
  unreadable: ({ count }: { count: number }) =>
    `${grouped(count)} more can’t be read and ${chosen(count, { one: 'is', other: 'are' })} skipped.`,
  soundFilesMissing: ({ count }: { count: number }) =>
    `The sound files of ${plural(count, 'song', 'songs')} aren’t here, and a backup has none: drop them on the page and each finds its song. Tempo, beats, and markers are in it.`,
  kind: ({ kind }: { kind: keyof typeof KINDS }) => KINDS[kind],
  classTaught: ({ title, on }: { title: string; on: string }) => `${title}, taught ${day(on)}`,
  ownFormCues: 'your own form cues',
  isNew: 'not here yet',
  isNewer: 'newer than yours; yours stays as a version',
  isOlder: 'older than yours; yours would stay as a version',
  isOtherRide: 'differs from yours; yours would stay as a version',
  isOther: 'differs from yours; yours would be replaced',
  isSame: 'the same as yours',

  // Said as it happens
  beforeRestore: 'before restoring a backup',
  rideRestored: 'Restored the ride from the backup',
  restored: ({ count }: { count: number }) => `Restored ${plural(count, 'entry', 'entries')} from the backup`,
  notAllRestored: 'Not everything could be restored. What was here is still here.',
  cannotSave: 'This window can’t save anything (private browsing?), so no backup can be restored.',
  hereUnreadable: 'What’s saved on this device couldn’t be read, so the backup wasn’t looked at.',
  damaged: 'It’s a damaged backup.',
  newer: 'It’s a backup made with a newer version. Update to read it.',
}
