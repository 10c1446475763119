import type { PatternWords } from './patternWords.ts'

/** What starter blocks are called and say in American English. */
export const ENGLISH: PatternWords = {
  flat: { name: 'flat', feel: 'brisk legs, you can still chat', cue: 'Sit tall, soft hands, brisk legs.' },
  'standing-flat': { name: 'standing flat', feel: 'tall and light, a break for the seat', cue: 'Up for a moment. Tall, light hands.' },
  'seated-hill': { name: 'seated climb', feel: 'heavy, still smooth', cue: 'Seated climb. Heavy, but smooth.' },
  'standing-hill': {
    name: 'standing climb',
    feel: 'weight over the pedals, light hands',
    cue: 'Resistance first, then rise. Light hands.',
  },
  hover: { name: 'hover', feel: 'hips just off the saddle, weight in the legs', cue: 'Hover next. Hips back, just off the saddle.' },
  hold: { name: 'hold', feel: 'heavy and even, nothing moves but the legs', cue: 'Now hold it. Same legs, same weight.' },
  'jumps-16': { name: 'jumps on 16', feel: 'slow up, slow down, land soft', cue: 'Slow jumps next. Up for long, down for long.' },
  'jumps-8': { name: 'jumps on 8', feel: 'land soft, hips do the work', cue: 'Jumps next. Up slow, down slow, land soft.' },
  'jumps-4': { name: 'jumps on 4', feel: 'quick and small, land soft', cue: 'Quick jumps next. Small and soft.' },
  push: { name: 'push', feel: 'hard, a word at a time', cue: 'Push next. Resistance first, then go.' },
  run: { name: 'standing run', feel: 'up light, on the beat', cue: 'Standing run. Up light, hips over the saddle.' },
  leans: { name: 'side leans', feel: 'shoulders move, hips stay', cue: 'Side leans. Left first, hips stay still.' },
  presses: { name: 'presses', feel: 'elbows bend, weight stays off the hands', cue: 'Presses next. Elbows soft, weight in the legs.' },
  corners: { name: 'corners', feel: 'shoulders go round, hips stay', cue: 'Corners next. Right, back, left, front.' },
  'travel-backs': { name: 'travel-backs', feel: 'hips back and home, hands light', cue: 'Travel-backs next. Hips back, then home.' },
  tempo: { name: 'tempo', feel: 'steady, a sentence at most', cue: 'Tempo. Find it and hold it.' },
  surge: { name: 'surge', feel: 'a lift you can come back from', cue: 'Surge next. Lift it.' },
  'standing-surge': {
    name: 'standing surge',
    feel: 'a lift out of the saddle you can come back from',
    cue: 'Standing surge next. Resistance first, then up and go.',
  },
  recover: { name: 'recover', feel: 'breath comes back', cue: 'Sit. Ease it off and breathe.' },
  flush: { name: 'flush', feel: 'light contact, legs roll', cue: 'Let the legs roll, keep a light base.' },
  stretch: { name: 'stretch', feel: 'wheel stopped, no bouncing', cue: 'Wheel stopped. Hips, hamstrings, calves.' },
}
