import type { Kind } from '#engine/roughIn/words/passage.ts'
import type { OfMove } from '#engine/roughIn/words/voice.ts'

/** How a body is held while riding in the saddle, at any effort. Common practice. */
const SEATED = [
  'Schultern weg von den Ohren.',
  'Ellbogen weich.',
  'Griff lockern.',
  'Hüfte ruhig auf dem Sattel.',
  'Blick nach vorn, Kinn gerade.',
  'Bauch fest, Rücken lang.',
  'Fersen unten gerade.',
  'Gesicht entspannen.',
  'Handgelenke gerade, Finger locker.',
  'Sitzt hinten auf dem Sattel.',
  'Streift den Dreck von den Sohlen.',
  'Knie zeigen nach vorn.',
  'Kreise treten, keine Ecken.',
  'Zieht unten durch.',
  'Kiefer locker lassen.',
  'Brust offen, langer Nacken.',
  'Druck aus den Händen nehmen.',
  'Rund treten, über den ganzen Kreis.',
] as const

const CLIMBING = [
  'Hände breit, Ellbogen tief.',
  'Rutscht etwas nach hinten, Gesäß arbeitet.',
  'Drückt aus der Hüfte.',
  'Fersen tief, langer Rücken.',
  'Brust offen am Berg.',
  'Zieht die Knie hoch.',
  'Große Kreise, kein Stampfen.',
  'Beugt euch aus der Hüfte.',
  'Lasst den Berg zu euch kommen.',
] as const

const STANDING = [
  'Gewicht über den Pedalen, Hände nur fürs Gleichgewicht.',
  'Hüfte über den Pedalen.',
  'Weiche Knie, langer Rücken.',
  'Hände so leicht wie am Klavier.',
  'Schultern nach hinten und tief.',
  'Bauch fest, Hüfte ruhig.',
  'Streift den Sattel, nicht hinsetzen.',
  'Brust hoch, Fersen schwer.',
  'Knie weich, nie durchgestreckt.',
  'Das Rad bleibt ruhig.',
  'Blick vor euch, Kinn gerade.',
] as const

export const POINTS: Record<Kind, readonly string[]> = {
  flat: SEATED,
  tempo: SEATED,
  hold: [...SEATED, 'Oben alles still, nur die Beine fahren.', 'Still ab der Hüfte aufwärts.', 'Ruhige Schultern, die Beine arbeiten.'],
  climb: [...CLIMBING, ...SEATED],
  tallClimb: STANDING,
  tallFlat: STANDING,
  run: [...STANDING, 'Die Füße landen unter der Hüfte.', 'Bleibt leicht, kein Hüpfen.'],
  jumps: [
    'Die Beine heben euch, Hände bleiben leicht.',
    'Landet wie eine Feder.',
    'Hüfte nach hinten beim Hinsetzen.',
    'Nicht am Lenker ziehen.',
    'Gleich schnell hoch und runter.',
  ],
  move: STANDING,
  surge: [
    'Schultern tief, Beine schnell.',
    'Hüfte ruhig, Füße schnell.',
    'Bauch fest, Beine frei.',
    'Lockeres Gesicht, schnelle Füße.',
    'Beim Drücken ausatmen.',
  ],
  push: [
    'Hüfte ruhig, Füße schnell.',
    'Atmet, bleibt rund.',
    'Schultern tief, die Beine schieben.',
    'Bauch fest, Hände locker.',
    'Lockeres Gesicht, starke Beine.',
  ],
  recover: [
    'Schultern nach hinten rollen.',
    'Eine Hand ausschütteln, dann die andere.',
    'Aufrecht sitzen und atmen.',
    'Handgelenke kreisen.',
    'Schultern fallen lassen, Atem beruhigen.',
    'Lang einatmen, lang ausatmen.',
  ],
  flush: [
    'Setzt euch aufrecht hin.',
    'Eine Hand auf den Oberschenkel, die andere ausschütteln.',
    'Nacken rollen, links und rechts.',
    'Atem und Beine werden langsam.',
    'Schultern zurück, Brust auf.',
    'Handgelenke locker lassen.',
  ],
  stretch: [],
}

/** How each move is done, said the first time it is shown; the first that names the move is used. Common practice. */
export const MOVE_POINTS: OfMove = [
  [
    /^(?:jump|lift|rise)/,
    ['Leichte Hände, weich landen.', 'Die Hüfte hebt, Hände bleiben leicht, weich landen.', 'Aus den Beinen hoch, langsam setzen.'],
  ],
  [
    /travel/,
    [
      'Hüfte zurück über den Sattel, langer Rücken.',
      'Die Hüfte wandert, Schultern bleiben.',
      'Sattel streifen, dann zurück nach vorn, Hüfte führt.',
    ],
  ],
  [
    /press|push-up|dip/,
    ['Ellbogen weich, Gewicht in den Beinen.', 'Ellbogen beugen, Hüfte bleibt ruhig.', 'Kleine Beuge, Schultern tief, Bauch fest.'],
  ],
  [
    /corner/,
    ['Die Schultern malen die Ecken, Hüfte bleibt.', 'Ellbogen beugen, Hüfte über den Pedalen.', 'Die Brust führt, Hände leicht.'],
  ],
  [
    /lean|sway/,
    [
      'Schultern bewegen sich, Hüfte bleibt über den Pedalen.',
      'Einen Ellbogen beugen, Hüfte ruhig.',
      'Aus den Rippen neigen, nicht aus den Knien.',
    ],
  ],
  [/roll/, ['Langsam und groß, Schultern locker.', 'Schultern hoch, zurück und tief.']],
  [/crunch|pulse|tap/, ['Klein und aus der Mitte, Schultern weich.', 'Bauch fest, Schultern weich.']],
  [/freeze|isolation|hold/, ['Schultern ruhig, nur die Beine fahren.', 'Still ab der Hüfte aufwärts.']],
]

/** Where no list names the move. */
export const ANY_MOVE: readonly string[] = [
  'Erst langsam und klein, Schultern locker.',
  'Leichte Hände, Hüfte über den Pedalen.',
  'Die Beine laufen weiter, Hände leicht.',
]

/** The same in a word or two, for the call of a move that is new. */
export const SHORT_POINTS: OfMove = [
  [/^(?:jump|lift|rise)/, ['Weich landen.', 'Hände leicht.', 'Hüfte hebt euch.']],
  [/travel/, ['Hüfte wandert, Schultern bleiben.', 'Hüfte zurück, Rücken lang.']],
  [/press|push-up|dip/, ['Ellbogen weich.', 'Hüfte ruhig.']],
  [/corner/, ['Hüfte bleibt.', 'Schultern führen.']],
  [/lean|sway/, ['Hüfte ruhig.', 'Nur die Schultern.']],
]
