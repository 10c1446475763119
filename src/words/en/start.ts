import { clock, duration, number, plural } from '#words/forms.ts'

/** The place where everyone begins. */
export const start = {
  heading: 'Plan a ride to your music.',
  lede: 'Songs, resistance, and cues on one timeline. No account; works offline; your rides stay on this device.',

  // What there is already.
  yourRides: 'your rides',
  changed: ({ when }: { when: string }) => `changed ${when}`,
  justNow: 'just now',
  delete: 'delete',
  deleteRide: ({ title }: { title: string }) => `delete ${title}`,
  deleteForGoodTitle: ({ title }: { title: string }) => `Delete “${title}” for good?`,
  deleteForGoodText: 'This version can’t read the ride, so it couldn’t be restored. A newer version may be able to.',
  deleteForGood: 'delete for good',
  cancel: 'cancel',
  keptForSure: 'This browser keeps them until you clear this site’s data yourself. A backup survives that too.',
  keptPerhaps:
    'This browser may clear them on its own when the disk is nearly full, or when this page hasn’t been opened for weeks. Save a backup as a file.',
  sampleRides: 'try a sample ride',
  sampleFailed: 'This sample ride couldn’t be loaded. Everything else works without it.',
  minutes: ({ minutes }: { minutes: number }) => `${number(minutes)} min`,
  songs: ({ count }: { count: number }) => plural(count, 'song', 'songs'),

  // A new ride.
  newRide: 'new ride',
  title: 'title',
  /** The title of a ride nobody gave one. */
  newRideTitle: 'New ride',
  classLength: 'class length in minutes',
  other: 'other',
  otherLength: 'other length',
  minutesUnit: 'min',
  minutesProblem: ({ least, most }: { least: number; most: number }) => `Write whole minutes from ${least} to ${most}, such as 50.`,
  level: 'level',
  bike: 'bike',
  typicalBike: ({ name }: { name: string }) => `${name}, typical`,
  playlist: 'playlist',
  playlistExample: 'Paper Lanterns – The Odd Hours – 3:42 – 128 bpm\nSlow Ferry, 4:10, 96\nNight Market 3:05',
  playlistHint:
    'Paste your playlist, one song per line: title, length, bpm. CSV with named columns, XSPF, and M3U work too, or drop the file anywhere on this page. Leave it empty for a blank ride.',
  musicHint:
    'Have the music files? Drop them, or their folder, anywhere on this page: they are read on this device and go to my songs, where you pick the ones for a ride.',
  linkInstead: ({ ride }: { ride: string }) => `That’s a link to a ride: ${ride}. Open it?`,
  lineBegins: 'each line begins with',
  theTitle: 'the title',
  theArtist: 'the artist',
  startBlank: 'start a blank ride',
  makeRide: ({ count }: { count: number }) => `make a ride from ${count === 1 ? 'this song' : plural(count, 'song', 'songs')}`,
  makeRideOfFirst: ({ most, count }: { most: number; count: number }) => `make a ride from the first ${most} of ${number(count)} songs`,
  mostSongs: ({ most }: { most: number }) => `A ride holds at most ${most} songs. The whole list can go to my songs, to choose from there.`,
  linesSkipped: ({ count }: { count: number }) => `${plural(count, 'line is', 'lines are')} skipped.`,

  // The table of what was read.
  read: 'what was read',
  song: 'song',
  length: 'length',
  tempo: 'tempo',
  cadence: 'cadence',
  notGiven: 'not given',
  skipped: ({ line, text, sentence }: { line: number; text: string; sentence: string }) => `${line}. “${text}” is skipped: ${sentence}`,
  line: ({ line }: { line: number }) => `line ${line}`,
  emptyLine: 'Empty line, skipped.',
  readAs: ({ parts }: { parts: readonly string[] }) => `Read as ${parts.join(', ')}.`,
  timeLeft: ({ total, length }: { total: number; length: number }) =>
    `${clock(total)} of ${clock(length)} · ${total > length ? `${clock(total - length)} over` : `${clock(length - total)} left`}`,
  betweenSongs: ({ seconds }: { seconds: number }) => `(${duration(seconds)} between songs)`,
  usualLength: ({ seconds }: { seconds: number }) => `· songs without a length count as ${clock(seconds)}`,

  // A ride from elsewhere.
  openLink: 'open a ride link',
  linkOrMessage: 'link, or the message it came in',
  found: ({ title, level, minutes, links }: { title: string; level: string; minutes: number; links: number }) =>
    `“${title}”, ${level}, ${number(minutes)} min${links > 1 ? `, the first of ${links} links in this text` : ''}`,
  noLink: 'There’s no ride link in this text. A ride link has “#r1.” in it, and many letters after that.',
  badRideInLink: ({ reason }: { reason: string }) => `The ride in this link can’t be opened. ${reason}`,
  fileText: 'The text of a ride file.',
  pastedText: 'pasted text',
  nothingToOpen: 'There’s nothing to open yet. Paste the link here first.',
  pasteHere: 'Paste it here. You can look at the ride before you save it.',
  open: 'open',
  openIt: 'open it',
  openFile: 'open a ride file',
  chooseFile: 'open a file…',
  orDrop: 'or drop it anywhere on the page',

  // The cautions.
  beforeClass: 'before any class',
  clearance: 'clearance',
  clearanceText:
    'Riders with symptoms or a known heart, metabolic, or kidney condition need medical clearance if your studio’s screening requires it.',
  stop: 'stop',
  stopText: 'Stop on dizziness, chest pain, or unusual shortness of breath, and get help.',
  bikes: 'bikes',
  bikesText: 'Set up every bike and show riders the brake. Never pedal fast with no resistance.',
  newcomers: 'newcomers',
  newcomersText:
    'Build up slowly: muscle breakdown (rhabdo) after a first hard class is a documented risk. Give them an effort cap and permission to sit out.',
  room: 'room',
  roomText: 'Water within reach, moving air, an eye on the heat, and the volume kept safe for ears.',
  estimates: 'estimates',
  estimatesText: 'Figures here are estimates. You, the bike’s manual, the facility, local codes, and your certifying body come first.',
}
