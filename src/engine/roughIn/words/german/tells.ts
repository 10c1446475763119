import type { LoadWords, OnlyWhere, Voice } from '#engine/roughIn/words/voice.ts'

/** A whole word, or the beginning of one: \b knows no umlauts. */
const word = (words: string): RegExp => new RegExp(`(?<!\\p{L})(?:${words})(?!\\p{L})`, 'iu')

/** Which words go with which effort, 0–10: the bands of the English words that say the same. */
const LOADS: readonly LoadWords[] = [
  { name: 'next to nothing', words: word('(?:fast|beinahe|kaum) (?:nichts|druck|was|etwas)|ohne mühe'), least: 0, most: 3 },
  { name: 'light', words: word('leicht\\p{L}*|locker\\p{L}*|sanft\\p{L}*|mühelos\\p{L}*'), least: 0, most: 4.5 },
  { name: 'chatty', words: word('plauder\\p{L}*|unterhalten|ganze[nr]? sätze|mitsingen'), least: 0, most: 4.5 },
  {
    name: 'recovering',
    words: word('erhol\\p{L}*|ausruhen|pause|kommt zu atem|zu atem zu kommen|holt euch den atem|der atem kommt zurück'),
    least: 0,
    most: 5,
  },
  { name: 'comfortable', words: word('bequem\\p{L}*|gemütlich\\p{L}*'), least: 0, most: 5.5 },
  {
    name: 'firm',
    words: word('feste?[rsn]?|solide\\p{L}*|druck unter den füßen|hält dagegen|gegendruck|kurze sätze|ehrliche arbeit'),
    least: 4.5,
    most: 7.5,
  },
  { name: 'heavy', words: word('schwer\\p{L}*|zäh(?:e[rsn]?)?|steil\\p{L}*|stampfen am berg'), least: 6, most: 10, weighted: true },
  {
    name: 'strong',
    words: word('kräftig\\p{L}*|stark|starke[rsn]?|paar worte?|echter berg|atem laut'),
    least: 6,
    most: 10,
  },
  { name: 'hard', words: word('hart\\p{L}*|härter\\p{L}*|brennt|brennen'), least: 7, most: 10 },
  {
    name: 'hardest',
    words: word('ein wort|atemlos|außer atem|alles (?:in|rund|kräftig)|fast alles|alles, was ihr habt|nichts mehr übrig'),
    least: 8,
    most: 10,
  },
  { name: 'heavier', words: word('wird schwerer|wird steiler'), least: 0, most: 10, knob: 'up' },
  { name: 'lighter', words: word('wird leichter|wird flach\\p{L}*|flacht ab'), least: 0, most: 10, knob: 'down' },
]

const PARTS =
  'händen?|hand|griff|lenker|ellbogen|schultern?|arme?|gesicht|kiefer|nacken|füßen?|fuß|knien?|bauch|finger|handgelenke?|sohlen|hüfte|rücken|oberkörper|fersen?'

/** "leichte Hände", "lockere Schultern", "Bauch fest", "weich landen": how a body is held is no load. */
const OF_THE_BODY = new RegExp(
  `(?<!\\p{L})(?:leicht|locker|weich|sanft|schwer|stark|fest|kräftig)\\p{L}*\\s+(?:(?:und|,)\\s+\\p{L}+\\s+)?(?:${PARTS})(?!\\p{L})` +
    `|(?<!\\p{L})(?:${PARTS})\\s+(?:(?:sind|bleiben|bleibt|ist|so)\\s+)?(?:leicht|locker|weich|sanft|schwer|fest|stark)(?!\\p{L})` +
    `|(?<!\\p{L})(?:leicht|weich|sanft)\\s+(?:hoch|landen|oben)(?!\\p{L})|(?<!\\p{L})(?:bleibt|landet)\\s+(?:leicht|weich)(?!\\p{L})` +
    `|(?<!\\p{L})starke?\\s+leistung(?!\\p{L})`,
  'giu',
)

/** Words that are true only somewhere, and where that is. */
const ONLY: readonly OnlyWhere[] = [
  [
    word('beat|rhythmus|die eins|zählt mit|\\p{L}+ zählzeiten|(?:noch|letzte[rn]?) (?:\\p{L}+ )?achter|(?:noch|letzte) (?:acht|sechzehn)'),
    ({ onBeat }) => onBeat,
  ],
  [
    word('gleichmäßig\\p{L}*|ein tempo|derselbe druck|gleicher druck|haltet (?:das|es|ihn|ein|euer)|ruhig halten|das hier haltet'),
    ({ block: { effort } }) => effort.to <= effort.from,
  ],
  [word('aufwachen|aufwärmen|wärmen|weckt die beine'), ({ role }) => role === 'warmUp'],
  [word('da kommt der berg|geht langsam hoch|kleine steigung|gleich der berg'), ({ before }) => before?.block.terrain !== 'hill'],
  [word('nach hause|letzter song'), ({ isLast }) => isLast],
  [
    word('zurück in den sattel|auf dem sattel|hinten auf dem sattel|im sattel'),
    ({ block }) => block.posture === 'seated' || block.move !== undefined,
  ],
]

export const tells: Voice['tells'] = {
  loads: LOADS,
  body: OF_THE_BODY,
  form: word('hüfte|hände?|schultern?|ellbogen|knien?|landen|landet|brust|rücken'),
  length: word('sekunden?|minuten?|zählzeiten'),
  numbers: word('sekunden?|minuten?|von zehn'),
  only: ONLY,
}
