import type { PatternWords } from './patternWords.ts'

/** What starter blocks are called and say in German; moves by the names they go by there. */
export const GERMAN: PatternWords = {
  flat: { name: 'Flachstück', feel: 'flotte Beine, plaudern geht noch', cue: 'Sitzt aufrecht, weiche Hände, flotte Beine.' },
  'standing-flat': {
    name: 'Flachstück im Stehen',
    feel: 'groß und leicht, eine Pause fürs Gesäß',
    cue: 'Kurz aufstehen. Groß, leichte Hände.',
  },
  'seated-hill': { name: 'Berg im Sitzen', feel: 'schwer, noch rund', cue: 'Berg im Sitzen. Schwer, aber rund.' },
  'standing-hill': {
    name: 'Berg im Stehen',
    feel: 'Gewicht über den Pedalen, leichte Hände',
    cue: 'Erst Widerstand, dann aufstehen. Leichte Hände.',
  },
  hover: {
    name: 'Hover',
    feel: 'Hüfte knapp über dem Sattel, Gewicht in den Beinen',
    cue: 'Gleich der Hover. Hüfte zurück, knapp über den Sattel.',
  },
  hold: { name: 'Halten', feel: 'schwer und gleichmäßig, nur die Beine bewegen sich', cue: 'Jetzt halten. Gleiche Beine, gleicher Druck.' },
  'jumps-16': {
    name: 'Jumps auf 16',
    feel: 'langsam hoch, langsam runter, weich landen',
    cue: 'Gleich langsame Jumps. Lange hoch, lange runter.',
    move: 'Jump',
  },
  'jumps-8': {
    name: 'Jumps auf 8',
    feel: 'weich landen, die Hüfte arbeitet',
    cue: 'Gleich Jumps. Langsam hoch, langsam runter, weich landen.',
    move: 'Jump',
  },
  'jumps-4': { name: 'Jumps auf 4', feel: 'schnell und klein, weich landen', cue: 'Gleich schnelle Jumps. Klein und weich.', move: 'Jump' },
  push: { name: 'Push', feel: 'hart, ein Wort am Stück', cue: 'Gleich der Push. Erst Widerstand, dann los.' },
  run: { name: 'Laufen im Stehen', feel: 'leicht oben, auf dem Beat', cue: 'Laufen im Stehen. Leicht hoch, Hüfte über dem Sattel.' },
  leans: {
    name: 'Seitneigungen',
    feel: 'Schultern bewegen sich, Hüfte bleibt',
    cue: 'Seitneigungen. Links zuerst, Hüfte bleibt ruhig.',
    move: 'Seitneigung',
  },
  presses: {
    name: 'Liegestütze',
    feel: 'Ellbogen beugen, kein Gewicht auf den Händen',
    cue: 'Gleich Liegestütze. Ellbogen weich, Gewicht in den Beinen.',
    move: 'Liegestütz',
  },
  corners: { name: 'Ecken', feel: 'Schultern kreisen, Hüfte bleibt', cue: 'Gleich die Ecken. Rechts, hinten, links, vorn.', move: 'Ecke' },
  'travel-backs': {
    name: 'Travel-Backs',
    feel: 'Hüfte zurück und wieder vor, Hände leicht',
    cue: 'Gleich Travel-Backs. Hüfte zurück, dann wieder vor.',
    move: 'Travel-Back',
  },
  tempo: { name: 'Tempo', feel: 'gleichmäßig, höchstens ein Satz', cue: 'Tempo. Finden und halten.' },
  surge: { name: 'Antritt', feel: 'ein Antritt, von dem ihr zurückkommt', cue: 'Gleich der Antritt. Anziehen.' },
  'standing-surge': {
    name: 'Antritt im Stehen',
    feel: 'ein Antritt aus dem Sattel, von dem ihr zurückkommt',
    cue: 'Gleich Antritt im Stehen. Erst Widerstand, dann hoch und los.',
  },
  recover: { name: 'Erholung', feel: 'der Atem kommt zurück', cue: 'Hinsetzen. Etwas rausnehmen und atmen.' },
  flush: { name: 'Ausrollen', feel: 'leichter Kontakt, die Beine rollen', cue: 'Lasst die Beine rollen, etwas Grundwiderstand bleibt.' },
  stretch: { name: 'Dehnen', feel: 'Rad steht, nicht wippen', cue: 'Rad steht. Hüfte, Oberschenkel, Waden.' },
}
