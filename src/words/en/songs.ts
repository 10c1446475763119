import { and, bytes, chosen, clock, day, number, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

/** My songs: the songs kept apart from rides. */

const ORDERS = { title: 'title', artist: 'artist', tempo: 'tempo', length: 'length', energy: 'energy' }

const STROKES = { '0.5': 'half time', '1': 'on the beat', '2': 'double time', null: 'off the beat' }

export const songs = {
  heading: 'songs',
  count: ({ songs }: { songs: number }) => plural(songs, 'song', 'songs'),
  cannotSave: 'This window can’t save anything (private browsing?), so no songs.',
  list: 'my songs',
  none: 'No songs yet. Add music files, import a list, add a song, or save a song of a ride from its panel in the plan.',
  search: 'title or artist',
  sortBy: 'sort by',
  order: ({ order }: { order: keyof typeof ORDERS }) => ORDERS[order],
  noneFound: ({ search }: { search: string }) => `No song has “${search}” in its title or artist.`,
  add: 'add songs',
  newRide: 'New ride',

  // Files.
  files: 'add music files',
  addFiles: 'add music files…',
  addFolder: 'add a folder…',
  dropFiles:
    'Or drop files and folders anywhere on this page. Tempo, beats, and bars are found on this device; nothing is sent anywhere, and no file is saved unless you ask.',
  reading: 'reading files',
  read: 'files read',
  skipped: ({ files }: { files: number }) => `Skipped ${plural(files, 'file', 'files')} (not audio).`,
  filesRead: 'files read',
  stopAll: 'stop all',
  clearList: 'clear the list',
  allFiles: 'files',
  filesToCheck: 'files to check',
  filesUnderWay: 'files being read',
  filesDone: 'files read',
  readingFile: ({ file }: { file: string }) => `reading ${file}`,
  stop: 'stop',
  stopReading: ({ file }: { file: string }) => `stop reading ${file}`,
  editFrom: ({ song, file }: { song: string; file: string }) => `edit ${song}, from ${file}`,
  /** Half or double the tempo that was found. */
  octave: ({ factor, bpm }: { factor: number; bpm: number | undefined }) =>
    `${factor === 2 ? 'double' : 'half'}${bpm === undefined ? '' : `: ${measures.bpm(bpm, 2)}`}`,

  // A list.
  import: 'import a list',
  listField: 'songs',
  listExample: 'Low Tide, Salt Lantern, 3:45, 128',
  listHint:
    'One song per line, a table with named columns (CSV), or the text of an XSPF or M3U playlist. You can drop its file anywhere on this page, too.',
  addCount: ({ songs }: { songs: number }) => (songs === 0 ? 'add songs' : `add ${plural(songs, 'song', 'songs')}`),
  openList: 'open a list…',
  linesSkipped: 'skipped lines',
  lineSkipped: ({ line, text, why }: { line: number; text: string; why: string }) => `${number(line)}. “${text}”: ${why}`,
  moreLines: ({ lines }: { lines: number }) => `and ${number(lines)} more.`,
  tooLarge: ({ file }: { file: string }) => `“${file}” is too large for a list of songs.`,
  unreadable: ({ file }: { file: string }) => `“${file}” couldn’t be read from the disk.`,

  // Songs checked, to make a ride of.
  check: 'Check songs in playing order, then make a ride.',
  checked: 'checked songs',
  checkedCount: ({ songs, seconds }: { songs: number; seconds: number }) => `${plural(songs, 'song', 'songs')} checked, ${clock(seconds)}`,
  makeRide: ({ songs }: { songs: number }) => `make a ride from ${plural(songs, 'song', 'songs')}`,
  addTo: ({ ride }: { ride: string }) => `add to “${ride}”`,
  clear: 'clear',
  most: ({ most }: { most: number }) => `A ride can have up to ${number(most)} songs.`,
  mostHere: ({ most, ride, room }: { most: number; ride: string; room: number }) =>
    `A ride can have up to ${number(most)} songs; “${ride}” has room for ${number(room)}.`,

  // The table.
  checkedHead: 'checked',
  songHead: 'song',
  lengthHead: 'length',
  tempoHead: 'tempo',
  cadenceHead: 'rpm in half time · on the beat · double time',
  energyHead: 'energy',
  detailsHead: 'details',
  usedHead: 'used in',
  actionsHead: 'actions',
  checkSong: ({ song }: { song: string }) => `check ${song}`,
  unknownTempo: 'not known',
  loudnessOf: ({ song }: { song: string }) => `loudness of ${song} over time`,
  edit: 'edit',
  editSong: ({ song }: { song: string }) => `edit ${song}`,
  remove: 'remove',
  removeSong: ({ song }: { song: string }) => `remove ${song} from my songs`,
  energyOf: ({ energy }: { energy: number }) => `${number(energy)} of 5`,
  aboutEnergy: ({ energy }: { energy: number }) => `about ${number(energy)}`,
  clean: 'clean',
  markers: ({ count }: { count: number }) => plural(count, 'marker', 'markers'),
  noTalkZones: ({ count }: { count: number }) => plural(count, 'no-talk zone', 'no-talk zones'),
  fileSaved: 'file saved',
  fileAtHand: 'file at hand',
  usedIn: ({ rides, more }: { rides: readonly string[]; more: number }) => and(more > 0 ? [...rides, `${number(more)} more`] : rides),
  taught: ({ times, last }: { times: number; last: string }) =>
    `taught ${times === 1 ? 'once' : `${number(times)} times`}, last on ${day(last, { dateStyle: 'medium' })}`,

  // Taken away.
  removed: ({ song, withFile }: { song: string; withFile: boolean }) =>
    `Removed “${song}”${withFile ? ' and its saved file' : ''}. Rides that use it are unchanged.`,
  restore: 'restore',

  // One song.
  newSong: 'new song',
  cancel: 'cancel',
  save: 'save to my songs',
  title: 'title',
  artist: 'artist',
  length: 'length',
  energy: 'energy',
  notSet: 'not set',
  atMost: ({ most }: { most: number }) => `Up to ${number(most)} characters.`,
  cleanLyrics: 'clean lyrics',
  loudness: ({ seconds }: { seconds: number }) => `loudness over ${clock(seconds)}`,
  energyGuess: ({ energy }: { energy: number }) =>
    `By loudness and beat, its energy is about ${number(energy)}. Just an estimate. Trust your ear.`,
  energySource: 'Common practice, no source.',
  takeEnergy: ({ energy }: { energy: number }) => `use ${number(energy)}`,
  detectAgain: 'detect the beat again',
  noFile: 'Its file isn’t at hand. Drop it here again to hear it or save it.',
  saveFile: ({ size }: { size: number }) => `save its file on this device (${bytes(size)})`,

  // Its beats.
  tempo: 'tempo',
  tempoExample: 'bpm, if you know it',
  firstBeat: 'first beat',
  intoSong: 's into the song',
  bars: 'bars',
  beatsPerBar: ({ beats }: { beats: number }) => `${number(beats)} beats per bar`,
  strokes: 'pedal strokes per beat',
  strokesChoice: ({ strokes, rpm }: { strokes: keyof typeof STROKES; rpm: number | undefined }) =>
    `${STROKES[strokes]}${rpm === undefined ? '' : `: ${measures.rpm(rpm)}`}`,
  oddBeats: 'odd beats',
  oddBeatsHint: 'One per line: the eight they come before, and how many are extra (+2) or missing (−1).',
  markersField: 'markers',
  markersExample: '1 intro\n33 chorus',
  markersHint: 'One per line: the eight it starts at, and its name.',
  noTalk: 'no-talk zones',
  noTalkHint: 'Eights to keep free of talk.',

  // Where it is used.
  whereUsed: 'where it is used',
  used: 'used',
  nowhere: 'In no ride and no class yet.',
  inRides: ({ rides }: { rides: readonly string[] }) => `in ${and(rides.map((ride) => `“${ride}”`))}`,
  inClass: ({ on, title }: { on: string; title: string }) => `${day(on, { dateStyle: 'medium' })}: ${title}`,
  moreClasses: ({ classes }: { classes: number }) =>
    `and ${number(classes)} earlier ${chosen(classes, { one: 'class', other: 'classes' })}`,
}
