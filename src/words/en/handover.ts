import { and, grouped, plural } from '#words/forms.ts'

/** Sharing a ride: by link, by code, by file; and a ride that somebody else shared. */
export const handover = {
  title: ({ title }: { title: string }) => `Share “${title}”`,

  // The link
  link: 'link',
  linkAbout:
    'The whole ride is in the link itself, after the “#”, which browsers never send to a server. Anyone who opens it sees the ride read-only and can keep a copy. Nothing of yours or theirs is changed.',
  characters: ({ count }: { count: number }) => `${grouped(count)} ${count === 1 ? 'character' : 'characters'}`,
  longLink: ({ most }: { most: number }) =>
    `Longer than ${grouped(most)} characters: some mail and chat apps cut links this long. The file below is safer.`,
  /** Where the length came from that links are kept to. */
  longLinkSource: 'common practice, no source',
  email: 'email it',
  copyThenEmail: 'copy, then email',
  mailSubject: ({ title }: { title: string }) => `Ride: ${title}`,
  mailBody: ({ title }: { title: string }) => `Here’s the ride “${title}”. It opens in a browser; nothing is installed.`,
  mailPaste: '(paste the link here)',

  // The code
  qr: 'QR code',
  tooLongForQr: ({ count, most }: { count: number; most: number }) =>
    `This link is too long for a QR code that scans easily (${grouped(count)} of about ${grouped(most)} characters). Send the link or the file instead.`,
  tooLongForQrSource: 'common practice, no source',
  drawingQr: 'drawing the code…',
  qrFailed: 'The code couldn’t be drawn. Send the link or the file instead.',
  qrLabel: 'QR code of the link',
  qrAbout: ({ count }: { count: number }) =>
    `Holds the same link, ${grouped(count)} characters. Point a phone camera at it from a few inches away; the ride opens read-only.`,

  // The file
  file: 'file',
  fileAbout: 'Holds the same as the link, at any length. The other person opens it from the start page, or drops it on the page.',
  openFile: 'open a file…',

  // What goes with it
  holdings: 'what’s included',
  included: 'included',
  notIncluded: 'never included',
  head: 'the title, level, class length, and goal',
  songs: ({ songs, withMusic }: { songs: number; withMusic: number }) =>
    withMusic === 0
      ? `${plural(songs, 'song', 'songs')}, no music yet`
      : `${plural(songs, 'song', 'songs')}, ${withMusic === songs ? '' : `${grouped(withMusic)} with music: `}title, artist, length, beat, and markers`,
  fingerprints: 'audio fingerprints of the files that were read, to recognize them again',
  blocks: ({ blocks, cues }: { blocks: number; cues: number }) =>
    `${plural(blocks, 'block', 'blocks')} with ${cues === 0 ? 'no cues yet' : `the words of ${plural(cues, 'cue', 'cues')}`}`,
  bike: ({ name }: { name: string }) => `the bike “${name}” with its scale`,
  names: ({ names }: { names: readonly string[] }) => `the ${names.length === 1 ? 'name' : 'names'} ${and(names)}`,
  notes: 'the notes on songs and blocks',
  subNotes: 'the notes for a sub, including those on the room',
  studioRules: 'the studio rules of the room, and the moves it avoids',
  versionIds: 'version IDs of what it was made from',
  privateNotes: 'your private notes on the ride',
  hiddenChecks: 'the checks you hid',
  needsPractice: 'the blocks you marked as needing practice',
  riders: 'riders you named',
  otherRides: 'your other rides',
  versions: 'the versions you saved',
  soundFiles: 'any sound or music file',

  // A ride that came in
  shared: 'shared ride',
  sharedRide: ({ title }: { title: string }) => `Shared ride “${title}”, read-only.`,
  lookAround: 'Look around. You can’t change it, and your rides are untouched.',
  belongsTo: ({ title }: { title: string }) => `It belongs to your ride “${title}”.`,
}
