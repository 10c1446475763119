import type { Kind } from '#engine/roughIn/words/passage.ts'

/** What a block should feel like, for the line under the call and for words in the middle of it; from light to hard. */
export const FEELS: Record<Kind, readonly string[]> = {
  flat: [
    'kaum Druck, die Beine drehen von allein',
    'leichter Kontakt, lockeres Reden',
    'leicht und rund, nichts hüpft',
    'etwas Druck, plaudern geht noch',
    'flotte Beine, ganze Sätze',
    'eine feste Straße, kurze Sätze',
    'fest und flott, der Atem wird lauter',
    'kräftig und schnell, nur ein paar Worte',
    'hart und schnell, ein Wort am Stück',
  ],
  tempo: [
    'gleichmäßig, ganze Sätze',
    'gleichmäßige Straße, lockerer Atem',
    'gleichmäßig, kurze Sätze',
    'fest und gleichmäßig, kurze Sätze',
    'solider, gleichmäßiger Druck',
    'kräftig und gleichmäßig, nur ein paar Worte',
    'kräftig, einen Song lang zu halten',
    'hart und gleichmäßig, ein Wort am Stück',
  ],
  climb: [
    'eine sanfte Steigung, lockerer Atem',
    'ein kleiner Berg, ganze Sätze',
    'leichter Berg, plaudern geht',
    'ein fester Berg, kurze Sätze',
    'der Berg hält dagegen, fester Druck',
    'schwer, noch rund',
    'schwer, aber es dreht, nur ein paar Worte',
    'echter Berg, kräftige Tritte',
    'steil und kräftig, Atem laut',
    'so schwer, wie ihr rund treten könnt, ein Wort am Stück',
  ],
  tallClimb: [
    'Gewicht über den Pedalen, leichte Hände',
    'wie Treppensteigen, leichte Hände',
    'kräftige Schritte, nur ein paar Worte',
    'schwere Schritte, Hände bleiben leicht',
    'steil und kräftig, ein Wort am Stück',
    'alles in den Beinen, nichts in den Händen',
  ],
  tallFlat: ['genug drauf, um groß zu stehen', 'ruhig unter den Füßen', 'federnd, leichte Hände'],
  run: ['leicht oben, auf dem Beat', 'federnd unter den Füßen', 'wie ein flotter Lauf, nur ein paar Worte', 'kräftige Schritte, Atem laut'],
  jumps: ['weich landen, die Hüfte arbeitet', 'genug drauf, um hochzuschweben', 'rund hoch und runter, nie fallen lassen'],
  move: ['Schultern bewegen sich, Hüfte bleibt', 'genug drauf, um ruhig zu bleiben', 'ruhige Füße, lockere Schultern'],
  surge: ['ein Antritt, von dem ihr zurückkommt', 'schnell und kräftig, nur ein paar Worte', 'hart, aber rund', 'ein Wort am Stück'],
  push: ['kräftig und schnell', 'hart, nur ein paar Worte', 'hart, ein Wort am Stück', 'fast alles, immer noch rund'],
  recover: [
    'der Atem kommt zurück',
    'leichter Kontakt, Atem wird ruhig',
    'lockere Beine, reden geht wieder',
    'leicht, die Beine rollen',
    'fast nichts, Atem wird ruhig',
  ],
  flush: ['leichter Kontakt, die Beine rollen', 'fast nichts, Beine locker', 'lockeres Rollen, ruhiger Atem'],
  stretch: ['Rad steht, nicht wippen', 'lang und langsam, nie bis zum Schmerz'],
  hold: ['oben still, Beine im Beat', 'fest und still', 'gleichmäßig, kurze Sätze', 'kräftig und still'],
}

/** Said in the middle of an effort. */
export const CHEER: readonly string[] = [
  'Bleibt dran.',
  'Genau hier zählt es.',
  'Rund bleiben, nicht hektisch.',
  'Bleibt im Beat.',
  'Haltet eure Form.',
  'Ganz ausatmen.',
  'Ihr schafft das.',
  'Fahrt euren eigenen Ride.',
  'Sauber bleiben.',
  'Auf dem Beat bleiben.',
  'Oben ruhig.',
  'Vertraut euren Beinen.',
]

/** Said where riders sit and breathe. */
export const CALM: readonly string[] = [
  'Merkt, wie schnell der Atem runterkommt.',
  'Gesicht abwischen, Hände neu setzen.',
  'Prüft die Schultern. Lasst sie fallen.',
  'Schaut euch um. Gute Gesellschaft.',
  'Nehmt euch hier, was ihr braucht.',
  'Lasst den Song die Beine tragen.',
  'Die Beine drehen, der Kopf ruht.',
  'Lächelt jemanden neben euch an.',
  'Spürt, wie die Beine zurückkommen.',
  'Dankt euren Beinen dafür.',
  'Hier müsst ihr nichts jagen.',
]

/** The end of the class, last words first. */
export const THANKS: readonly string[] = [
  'Danke fürs Mitfahren. Wischt euer Rad ab.',
  'Tolle Stunde. Wischt beim Rausgehen das Rad ab.',
  'Danke für die Arbeit heute. Trinkt noch etwas.',
  'Das war stark gefahren. Danke euch.',
  'Gut gefahren. Lasst euch Zeit beim Absteigen.',
]

/** Stretches, one after another: the first side and then the other. */
export const STRETCHES: readonly (readonly [first: string, other: string])[] = [
  ['Rechte Ferse tief, Hüfte zurück, hinten spüren.', 'Andere Seite, linke Ferse tief.'],
  ['Rechter Knöchel aufs linke Knie, aufrecht sitzen.', 'Jetzt der linke Knöchel.'],
  ['Rechter Arm quer rüber, halten.', 'Arm wechseln.'],
  ['Linke Wade zuerst, Ferse tief.', 'Jetzt die rechte Wade.'],
]

/** Welcome to the bike, early in the warm-up: base, knob, and a way to stay in charge. */
export const BASICS: readonly string[] = [
  'Nie ganz lose fahren. Grundwiderstand bleibt drauf.',
  'Grundwiderstand: so wenig, wie ihr noch im Griff habt.',
  'Knopf drücken stoppt das Rad.',
  'Der Knopf ist eure Bremse: drücken.',
  'Zu viel? Hinsetzen und etwas rausnehmen.',
  'Euer Ride, euer Widerstand.',
  'Erst Widerstand, dann aufstehen. Jedes Mal.',
]

export const DRINKS: readonly string[] = [
  'Trinkt einen Schluck.',
  'Trinken.',
  'Nehmt einen Schluck Wasser.',
  'Trinkpause.',
  'Holt euch Wasser.',
  'Ein Schluck Wasser.',
  'Trinkt etwas.',
  'Jetzt Wasser trinken.',
]

/** The saddle offered to who stands. */
export const SEATS: readonly string[] = [
  'Oder bleibt sitzen, gleicher Widerstand.',
  'Im Sitzen geht es auch.',
  'Der Sattel ist immer da.',
  'Den hier könnt ihr sitzend fahren.',
  'Option: im Sattel bleiben.',
  'Setzt euch, wann immer ihr wollt.',
  'Sitzen bleiben ist völlig okay.',
]

export const HALFWAY: readonly string[] = [
  'Halbzeit.',
  'Die Hälfte ist geschafft.',
  'Halbzeit, dranbleiben.',
  'Halbzeit, noch mal so viel.',
  'Halbzeit. Bleibt groß.',
  'Das war die Hälfte.',
]
