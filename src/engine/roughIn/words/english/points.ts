import type { Kind } from '#engine/roughIn/words/passage.ts'
import { english } from '#engine/speech/english/english.ts'

/** How a body is held while riding in the saddle, at any effort. */
const SEATED = [
  ...english.sentences.formPoints,
  'Elbows soft.',
  'Shoulders away from the ears.',
  'Relax your grip.',
  'Hips still on the saddle.',
  'Eyes forward, chin level.',
  'Belly in, back long.',
  'Heels level at the bottom.',
  'Relax your face.',
  'Wrists straight, fingers loose.',
  'Sit on the wide part of the saddle.',
  'Scrape the mud off your shoes.',
  'Knees track straight ahead.',
  'Pedal in circles, not squares.',
  'Pull through the bottom.',
  'Loosen your jaw.',
] as const

const CLIMBING = [
  'Hands wide, elbows down.',
  'Slide back an inch, use the glutes.',
  'Press from the hip.',
  'Heels low, long back.',
  'Keep the chest open on the hill.',
  'Pull the knees up.',
  'Big circles, no stomping.',
  'Hinge from the hips.',
  'Let the hill come to you.',
] as const

const STANDING = [
  'Weight over the pedals, hands just for balance.',
  'Hips over the pedals.',
  'Soft knees, long spine.',
  'Hands light enough to play piano.',
  'Shoulders back and down.',
  'Core tight, hips quiet.',
  'Brush the saddle, do not sit back.',
  'Tall chest, heavy heels.',
  'Knees soft, never locked.',
  'Let the bike hold still.',
  'Eyes up, chin level.',
] as const

/** Form points by kind of block. Common practice; the shared ones are the leader's own bank. */
export const POINTS: Record<Kind, readonly string[]> = {
  flat: SEATED,
  tempo: SEATED,
  hold: [...SEATED, 'Freeze the upper body, only the legs move.', 'Still from the hips up.', 'Quiet shoulders, working legs.'],
  climb: [...CLIMBING, ...SEATED],
  tallClimb: STANDING,
  tallFlat: STANDING,
  run: [...STANDING, 'Feet fall under the hips.', 'Stay light, no bounce.'],
  jumps: [
    'Legs lift you, hands stay light.',
    'Land like a feather.',
    'Hips back as you sit.',
    'No pulling on the bars.',
    'Same speed up and down.',
  ],
  move: STANDING,
  surge: [
    'Shoulders down, legs fast.',
    'Hips still, feet quick.',
    'Hold the core, free the legs.',
    'Loose face, fast feet.',
    'Breathe out on the push.',
  ],
  push: [
    'Hips still, feet quick.',
    'Breathe, keep it smooth.',
    'Shoulders down, drive the legs.',
    'Core tight, hands loose.',
    'Loose face, strong legs.',
  ],
  recover: [
    'Roll the shoulders back.',
    'Shake out one hand, then the other.',
    'Sit up tall and breathe.',
    'Circle the wrists.',
    'Drop the shoulders, slow the breath.',
    'Breathe in for four, out for four.',
  ],
  flush: [
    'Sit up tall.',
    'One hand on the thigh, shake out the other.',
    'Roll the neck, left and right.',
    'Slow the breath down with the legs.',
    'Roll the shoulders back, open the chest.',
    'Let the wrists go loose.',
  ],
  stretch: [],
}

/** How each move is done, said the first time it is shown; the first that names the move is used. Common practice. */
export const MOVE_POINTS: readonly (readonly [move: RegExp, points: readonly string[]])[] = [
  [/^(?:jump|lift|rise)/, ['Light hands, land soft.', 'Hips lift, hands stay light, land soft.', 'Stand from the legs, sit down slow.']],
  [/travel/, ['Hips back over the saddle, long spine.', 'Hips travel, shoulders stay put.', 'Brush the saddle, then come home.']],
  [
    /press|push-up|dip/,
    ['Elbows soft, weight in the legs.', 'Bend the elbows, keep the hips still.', 'Small bend, shoulders down, core tight.'],
  ],
  [/corner/, ['Shoulders draw the corners, hips stay.', 'Elbows bend, hips stay over the pedals.', 'Lead with the chest, hands light.']],
  [
    /lean|sway/,
    ['Shoulders move, hips stay over the pedals.', 'Bend one elbow, keep the hips still.', 'Lean from the ribs, not the knees.'],
  ],
  [/roll/, ['Slow and wide, chin level.', 'Up, back, and down.']],
  [/crunch|pulse|tap/, ['Small and from the middle, breathe out.', 'Belly in, shoulders soft.']],
  [/freeze|isolation|hold/, ['Quiet upper body, only the legs move.', 'Hold still from the hips up.']],
]

/** Where no list names the move. */
export const ANY_MOVE: readonly string[] = [
  'Slow and small first, then on the beat.',
  'Light hands, hips over the pedals.',
  'Keep the legs going underneath.',
]

/** The same in a word or two, for the call of a move that is new. */
export const SHORT_POINTS: readonly (readonly [move: RegExp, points: readonly string[]])[] = [
  [/^(?:jump|lift|rise)/, ['Land soft.', 'Hands light.', 'Hips lift you.']],
  [/travel/, ['Hips move, shoulders stay.', 'Hips back, long spine.']],
  [/press|push-up|dip/, ['Elbows soft.', 'Hips still.']],
  [/corner/, ['Hips stay.', 'Shoulders lead.']],
  [/lean|sway/, ['Hips still.', 'Shoulders only.']],
]
