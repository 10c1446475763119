import type { Kind } from '#engine/roughIn/words/passage.ts'

/** What a block should feel like, for the line under the call and for words in the middle of it; from light to hard. */
export const FEELS: Record<Kind, readonly string[]> = {
  flat: [
    'barely any push, legs turn by themselves',
    'light contact, easy talk',
    'light and smooth, nothing bounces',
    'some grip, you can still chat',
    'brisk legs, full sentences',
    'a firm road, short sentences',
    'firm and quick, breath picks up',
    'strong and quick, a few words at a time',
    'hard and quick, one word at a time',
  ],
  tempo: [
    'steady, full sentences',
    'steady road, easy breath',
    'steady, short sentences',
    'firm and even, short sentences',
    'solid, even pressure',
    'strong and even, a few words at a time',
    'strong, you could hold it for a song',
    'hard and even, one word at a time',
  ],
  climb: [
    'a gentle rise, easy breath',
    'a small hill, full sentences',
    'light hill, you can chat',
    'a firm hill, short sentences',
    'the hill pushes back, breath deepens',
    'heavy, still smooth',
    'heavy but turning, a few words at a time',
    'real hill, strong strokes',
    'steep and strong, breath loud',
    'as heavy as you can turn smoothly, one word at a time',
  ],
  tallClimb: [
    'weight over the pedals, light hands',
    'like walking up stairs, light hands',
    'strong steps, a few words at a time',
    'heavy steps, hands still light',
    'steep and strong, one word at a time',
    'everything in the legs, nothing in the hands',
  ],
  tallFlat: ['enough under you to stand tall', 'steady under the feet', 'springy, hands light'],
  run: ['up light, on the beat', 'springy under the feet', 'like a quick jog, a few words at a time', 'strong steps, breath loud'],
  jumps: ['land soft, hips do the work', 'enough under you to float up', 'smooth up and down, never a drop'],
  move: ['shoulders move, hips stay', 'enough under you to stay steady', 'steady feet, loose shoulders'],
  surge: ['a lift you can come back from', 'quick and strong, a few words at a time', 'hard, but smooth', 'one word at a time'],
  push: ['strong and quick', 'hard, a few words at a time', 'hard, a word at a time', 'nearly everything, still smooth'],
  recover: [
    'breath comes back',
    'light contact, breath slows',
    'easy legs, talk comes back',
    'light, legs roll',
    'next to nothing, breath slows',
  ],
  flush: ['light contact, legs roll', 'next to nothing, legs loose', 'easy roll, slow breath'],
  stretch: ['wheel stopped, no bouncing', 'long and slow, never to pain'],
  hold: ['still up top, legs on the beat', 'firm and still', 'steady, short sentences', 'strong and still'],
}

/** Said in the middle of an effort. */
export const CHEER: readonly string[] = [
  'Stay with it.',
  'This is where it counts.',
  'Smooth, not frantic.',
  'Match the beat.',
  'Keep your shape.',
  'Breathe out, all the way.',
  'You have this.',
  'Ride your own ride.',
  'Hold your form.',
  'Stay on the beat.',
  'Quiet up top.',
  'Trust your legs.',
]

/** Said where riders sit and breathe. */
export const CALM: readonly string[] = [
  'Notice how fast the breath comes down.',
  'Wipe your face, reset your hands.',
  'Check your shoulders. Let them drop.',
  'Look around. Good company.',
  'Take what you need here.',
  'Let the song carry your legs.',
  'Legs keep moving, mind rests.',
  'Smile at someone next to you.',
  'Feel the legs come back to you.',
  'Thank your legs for that one.',
  'Nothing to chase here.',
]

/** The end of the class, last words first. */
export const THANKS: readonly string[] = [
  'Thank you for riding. Wipe down your bike.',
  'Great class. Wipe the bike down on your way out.',
  'Thanks for the work today. Sip some water.',
  'That was good riding. Thank you.',
  'Well ridden. Take your time getting off.',
]

/** Stretches, one after another: the first side and then the other. */
export const STRETCHES: readonly (readonly [first: string, other: string])[] = [
  ['Right heel down, hips back, feel the hamstring.', 'Other side, left heel down.'],
  ['Right ankle over the left knee, sit tall.', 'Now the left ankle over.'],
  ['Reach the right arm across, hold it.', 'Switch arms.'],
  ['Left calf first, heel low.', 'Now the right calf.'],
]

/** Welcome to the bike, early in the warm-up: base, knob, and a way to stay in charge. */
export const BASICS: readonly string[] = [
  'Never ride it loose. Keep base on.',
  'Base is the least you can control.',
  'Push the knob down to stop the wheel.',
  'Knob down is your brake.',
  'Feel lost? Sit, and take some off.',
  'Your ride, your resistance.',
  'Resistance on before you stand, every time.',
]

export const DRINKS: readonly string[] = [
  'Grab some water.',
  'Drink.',
  'Take a sip.',
  'Water break.',
  'Get some water.',
  'Sip some water.',
  'Have a drink.',
  'Water now.',
]

/** The saddle offered to who stands. */
export const SEATS: readonly string[] = [
  'Or stay seated, same load.',
  'Seated works too.',
  'The saddle is always there.',
  'You can take this one seated.',
  'Option: stay in the saddle.',
  'Sit whenever you need to.',
  'Staying seated is fine.',
]

export const HALFWAY: readonly string[] = [
  'Halfway.',
  'Halfway there.',
  'Halfway, hold it.',
  'Halfway, same again.',
  'Halfway. Stay tall.',
  'That is half of it.',
]
