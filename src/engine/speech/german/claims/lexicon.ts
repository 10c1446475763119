/** Words the grammar knows, each by all its forms. */

const wordSet = (words: string): ReadonlySet<string> => new Set(words.split(' '))

/** Kinds of block by every form of their names, English ones too, which German rooms use as much. */
const KINDS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    push: 'push pushes pushs pushen',
    hill: 'hill hills berg berge bergen berges berg- climb climbs anstieg anstiege anstiegen hügel hügeln',
    surge: 'surge surges antritt antritte antritten',
    sprint: 'sprint sprints',
    attack: 'attack attacks attacke attacken',
    jump: 'jump jumps sprung sprünge sprüngen',
    run: 'run runs lauf läufe läufen',
    flat: 'flat flats flachstück flachstücke flachstücken',
    tempo: 'tempo',
    recover: 'recover recovery erholung erholungen pause pausen',
    flush: 'flush ausrollen',
    stretch: 'stretch dehnen',
    round: 'round rounds runde runden durchgang durchgänge durchgängen',
    set: 'set sets satz sätze sätzen',
    wave: 'wave waves welle wellen',
    interval: 'interval intervals intervall intervalle intervallen',
    effort: 'effort efforts belastung belastungen',
  }).flatMap(([kind, words]) => words.split(' ').map((word) => [word, kind] as const)),
)

/** One name for all forms of a kind; a word that is none loses the s of an English plural. */
export const kindOf = (word: string): string => KINDS.get(word) ?? word.replace(/([^s])s$/, '$1')

/** The kind a word of a cue names, if it is one that is known. */
export const knownKind = (word: string): string | undefined => KINDS.get(word)

/** How a kind is said in the singular and the plural. */
export const KIND_WORDS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  push: ['Push', 'Pushes'],
  hill: ['Berg', 'Berge'],
  surge: ['Antritt', 'Antritte'],
  sprint: ['Sprint', 'Sprints'],
  attack: ['Attacke', 'Attacken'],
  jump: ['Jump', 'Jumps'],
  run: ['Lauf', 'Läufe'],
  flat: ['Flachstück', 'Flachstücke'],
  recover: ['Erholung', 'Erholungen'],
  round: ['Runde', 'Runden'],
  set: ['Satz', 'Sätze'],
  wave: ['Welle', 'Wellen'],
  interval: ['Intervall', 'Intervalle'],
  effort: ['Belastung', 'Belastungen'],
}

/** Units of time by every form, in seconds. */
export const TIMES: ReadonlyMap<string, number> = new Map([
  ...'sekunde sekunden sek s sec'.split(' ').map((word) => [word, 1] as const),
  ...'minute minuten min'.split(' ').map((word) => [word, 60] as const),
])

/** Units of music by every form: what they are counted in, and how many. */
export const MUSIC: ReadonlyMap<string, Music> = new Map<string, Music>([
  ...counted('zählzeit zählzeiten zähler count counts', 1),
  ...counted('achter achtern', 8),
  ...counted('phrase phrasen', 32),
  ...'takt takte takten'.split(' ').map((word): [string, Music] => [word, { unit: 'bars', per: 1 }]),
])

interface Music {
  unit: 'counts' | 'bars'
  per: number
}

function counted(words: string, per: number): [string, Music][] {
  return words.split(' ').map((word) => [word, { unit: 'counts', per }])
}

/** The knob's own unit as it is called. */
export const TURN = /^(?:um)?drehung(?:en)?$|^turns?$/
/** "Vierteldrehung", "Viertelumdrehung", "Vierteldrehungen". */
export const PART_OF_TURN = /^(halb|viertel|dreiviertel|drittel|achtel)(?:e|en)?(?:um)?(?:drehung(?:en)?|turns?)$/
/** Units of scales that are counted in whole steps. */
export const LEVEL = /^(?:stufen?|levels?|gänge?|gang|gears?)$/

/** Behind an amount: more, and less. Two words are told by the first of them. */
export const MORE = wordSet('mehr drauf dazu rauf draufdrehen draufgeben draufpacken zudrehen hinzu extra obendrauf draufsetzen drauflegen')
export const LESS = wordSet('weniger raus runter weg rausnehmen wegnehmen runterdrehen rausdrehen zurückdrehen abnehmen herunter heraus')
/** Verbs that add where no word behind the amount says otherwise. */
export const ADDING = wordSet('gib gebt geben gebe pack packt packen leg legt legen')
/** What may stand between an amount and its direction. */
export const BETWEEN = wordSet('widerstand am vom knopf jetzt bitte noch wieder gleich nur für alle uns euch dir')

/** Whose sentence is of other riders, other days, or only might be: nothing in it is a claim. */
export const SILENT =
  /^(?:nicht|nie|niemals|kein|keine|keinen|keiner|keinem|wenn|falls|vielleicht|eventuell|oder|gestern|morgen|früher|damals|neulich|manche|manchmal|könnte|könnten|könntest|würde|würden|wäre|hätte|statt|anstatt|sonst|normalerweise|letztens|letztes|wer|wem|wie|als|ob|jahr|jahre|jahren|jahrgang|uhr|euro|kilometer|km|meter|metern|prozent|grad|kilo|kalorien|watt|puls|herzschläge|leute|leuten|freunde|freunden|mal)$/

/** Rising words that begin what something comes before. */
export const EASY = wordSet('locker leicht pause erholung easy ausrollen entspannt ruhig')
export const HARD = wordSet('hart vollgas arbeit druck gas stark maximal')
export const POSTURE = wordSet('stehend stehen sitzend sitzen hover')
