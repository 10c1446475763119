import type { Told } from '#engine/speech/speech.ts'

/** "Trinken!", "Schluck nehmen", "greift zur Flasche", "Wasser"; "Einatmen" and "Wasser unter der Brücke" are none. */
const DRINKING = /(?<!\p{L})(?:trink(?:en|t|e|pause)?|schluck|flaschen?|trinkflaschen?)(?!\p{L})/iu
const WATER = /^\s*(?:und\s+|kurz\s+|bisschen\s+|etwas\s+)?wasser(?:\s+(?:jetzt|bitte|nehmen|holen))?\s*$/iu
const NOT_NOW = /(?<!\p{L})(?:nicht|kein\p{L}*|nie|ohne|später|nachher|danach|nächst\p{L}*|erst|bald|gleich|bis)(?!\p{L})/iu
const REMINDER =
  /(?<!\p{L})(?:nicht|nie)\s+(?:vergessen|auslassen)|vergiss\s+(?:das\s+\p{L}+\s+)?nicht|vergesst\s+(?:das\s+\p{L}+\s+)?nicht/iu

const SEAT = /(?<!\p{L})(?:sitz(?:en|t|end)?|hinsetzen|setz(?:en|t)?|sattel)(?!\p{L})/iu
/** "Raus aus dem Sattel", "über dem Sattel": a place, and no offer. */
const PLACE = /(?<!\p{L})(?:aus|über|hinter|vor|zum)\s+(?:dem\s+|den\s+)?sattel(?!\p{L})/giu
const CHOICE =
  /(?<!\p{L})(?:oder|option(?:al)?|wer|wenn|falls|kann(?:st)?|könnt|können|darf(?:st)?|dürft|immer|gern(?:e)?|lieber|auch|alternativ|wahl|möchte(?:st|t)?|will(?:st)?|wollt)(?!\p{L})/iu
const STAY = /(?<!\p{L})(?:bleib(?:en|t|e)?)(?!\p{L})/iu

const BODY = 'hände?|griff|schultern?|arme?|ellbogen|gesicht|kiefer|füße|stimme|nacken'
const OF_THE_BODY = new RegExp(
  `(?<!\\p{L})(?:(?:locker|leicht|weich|ruhig|fest)\\p{L}*\\s+(?:${BODY})|(?:${BODY})\\s+(?:(?:sind|bleiben|ist)\\s+)?(?:locker|leicht|weich|ruhig))(?!\\p{L})`,
  'giu',
)
const RESISTANCE =
  /(?<!\p{L})(?:fühlt|gefühl|spür\p{L}*|schwer\p{L}*|leicht\p{L}*|locker\p{L}*|zäh\p{L}*|fest\p{L}*|hart\p{L}*|härter|steil\p{L}*|dick\p{L}*|weich\p{L}*|rund\p{L}*|flüssig\p{L}*|kräftig\p{L}*|druck|gegendruck|sand|matsch|schnee|schlamm|honig)(?!\p{L})/iu
const BREATH =
  /(?<!\p{L})(?:plaudern|unterhalten|reden|sprechen|ganze[nr]? sätze|kurze[nr]? sätze|ein wort|außer atem|atemlos|bequem|komfortabel)(?!\p{L})/iu

const MUSIC =
  /(?<!\p{L})(?:zählzeit(?:en)?|takte?|phrasen?|achter|refrain|strophe|bridge|break|drop|(?:ganze[nr]?|rest des) songs?|bis zum ende des songs)(?!\p{L})/iu
const EFFORT =
  /(?<!\p{L})(?:hart|härter|stark|schwer|push|pushen|antritt|sprint|attacke|berg|los|alles|vollgas|belastung|von zehn|von 10|atemlos|hoch|gipfel|finale|ziel|drück\p{L}*|gas)(?!\p{L})/iu
const RISING = /(?<!\p{L})(?:hoch|aufstehen|auf(?:ge)?standen|steht auf|steh auf|stehend|stehen|aus dem sattel)(?!\p{L})/iu

/** What of the body a form point names. */
const FORM =
  /(?<!\p{L})(?:hände?|hand|ellbogen|arme?|schultern?|brust|wirbelsäule|rücken|rumpf|hüften?|knie|fersen?|zehen|kinn|kopf|nacken|landen?|atme[nt]?|aufrecht|weich)(?!\p{L})/iu

/** What German words tell beside their numbers, in a leader's common words. */
export const told: Told = {
  drink: (text) =>
    text
      .split(/[.!?,;:…–—]+/)
      .some((clause) => !NOT_NOW.test(clause.replace(REMINDER, '')) && (WATER.test(clause) || DRINKING.test(clause))),
  seat(text) {
    const seated = text.split(/[.!?;…]+/).flatMap((sentence) => {
      const words = sentence.replace(PLACE, ' ')
      return SEAT.test(words) ? [words] : []
    })
    if (seated.some((words) => CHOICE.test(words))) return 'always'
    return seated.some((words) => STAY.test(words)) ? 'whereRidersStand' : 'never'
  },
  seated: (text) => SEAT.test(text),
  feel(text) {
    const rest = text.replace(OF_THE_BODY, ' ')
    return RESISTANCE.test(rest) || BREATH.test(rest)
  },
  form: (text) => FORM.test(text),
  effort: (text) => EFFORT.test(text),
  music: (text) => MUSIC.test(text),
  rising: (text) => text.search(RISING),
}
