import { CONSTANTS, type ConstantName } from '#engine/constants.ts'
import { words } from '#words/words.ts'

/** What the names of house rules begin with in a list of changes. */
export const RULE = 'houseRules.'

/** Whether a name is one the engine has: a ride can come with rules of a newer page. */
export const isRule = (name: string): name is ConstantName => Object.hasOwn(CONSTANTS, name)

/** The plain words for a field that is not called what it is named. */
const NAMES: Record<string, string> = {
  language: 'language of the cues',
  slotMinutes: 'slot',
  startsAt: 'start',
  briefingSeconds: 'briefing',
  clearUpSeconds: 'clear-up',
  datum: 'totals count from',
  avoidMoves: 'moves to avoid',
  'standIn.room': 'for a substitute, about the room',
  'standIn.regulars': 'for a substitute, what regulars expect',
  'standIn.mustDo': 'for a substitute, what has to be done',
  'standIn.mustNot': 'for a substitute, what must not be done',
  'leader.name': 'leader',
  'leader.wordsPerMinute': 'words a minute',
  leadInSeconds: 'lead-in',
  ridden: 'ridden part',
  'song.title': 'song',
  'song.artist': 'artist',
  'song.grid': 'tempo',
  'song.lengthSeconds': 'song length',
  'song.strikesPerBeat': 'strikes',
  'song.marks': 'marks in the song',
  'song.quiet': 'quiet stretches',
  'song.clean': 'clean lyrics',
  'song.fingerprint': 'sound file',
  'section lead': 'first foot',
  'block lead': 'lead foot',
  'cue lead': 'said ahead by',
  'cue count': 'count-in',
  label: 'name',
  strikesPerBeat: 'strikes',
  ownTotal: 'leader’s own total',
  allOut: 'all out',
  water: 'water',
  walk: 'off the bike among the riders',
  easier: 'easier version',
  harder: 'harder version',
  feel: 'how it feels',
  mic: 'at the microphone',
  locked: 'locked',
  eights: 'fewest and most eights',
  perRound: 'added each round',
  privateNotes: 'private notes',
  text: 'words',
}

/** What a field is called in a list of changes. */
export function sayField(of: string, field: string): string {
  if (field.startsWith(RULE)) {
    const name = field.slice(RULE.length)
    return `house rule “${isRule(name) ? words.rules.label({ name }) : name}”`
  }
  if (field.startsWith('rider.')) return 'rider'
  return NAMES[`${of} ${field}`] ?? NAMES[field] ?? field
}
