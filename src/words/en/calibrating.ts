import { clock, number } from '#words/forms.ts'
import { measures } from './measures.ts'
import { names } from './names.ts'

/** Calibrating a bike by its console's watts or by feel. */

const BRAKES = { friction: 'friction', magnetic: 'magnetic' }

const KINDS = { ...BRAKES, between: 'between friction and magnetic' }

type Feel = Parameters<typeof names.feel>[0]['feel']

/** How each feel is known. */
const MEANS: Readonly<Record<Feel, string>> = {
  base: 'just enough to control the pedals; nothing bounces, nothing pushes back',
  'easy flat': 'a light road; you chat',
  'brisk flat': 'a road with some grip; you still talk in whole sentences',
  'light hill': 'the legs have to push; sentences get short',
  'solid hill': 'clipped words; you could hold it for a song',
  'heavy hill': 'one word at a time; you could hold it for a minute or two',
}

const grew = (exponent: number) => `power grew with cadence to the power of ${number(exponent, 1)}, where friction is 1 and magnetic 2`

export const calibrating = {
  heading: 'calibrate',
  about: 'Takes about ten minutes on the bike. You’ll preview the change first.',
  byWatts: 'by the console’s watts',
  byFeel: 'by feel, without a console',
  byWattsTitle: ({ bike }: { bike: string }) => `${bike}, by the console’s watts`,
  byFeelTitle: ({ bike }: { bike: string }) => `${bike}, by feel`,
  byWattsLabel: 'calibrate by watts',
  byFeelLabel: 'calibrate by feel',

  // What to do now
  setKnob: ({ setting, isBase, rpm }: { setting: string; isBase: boolean; rpm: number }) =>
    `Set the knob to ${isBase ? `base, ${setting}` : setting}. Ride at ${measures.rpm(rpm)} until the watts settle, then type them.`,
  findFeel: ({ feel, rpm, unit }: { feel: Feel; rpm: number; unit: string }) =>
    `Ride at ${measures.rpm(rpm)} and turn the knob until it is “${names.feel({ feel })}”: ${MEANS[feel]}. Type where the knob is, in ${measures.unitOf(unit, true)}.`,
  last: 'That was the last one. See what it changes, then use it or cancel.',
  skip: 'skip this one',
  stay: 'Stay seated. Below base, only turn the legs as fast as you can control, or skip it.',

  // The fields
  oneCadence: 'one cadence for all',
  oneCadenceHint: ({ bpm, rpm }: { bpm: number; rpm: number }) =>
    `Tip: a ${measures.bpm(bpm)} song holds ${measures.rpm(rpm)} on the beat.`,
  anotherCadence: 'then at another',
  anotherCadenceHint: 'Tells how the brake answers to cadence. Three settings are enough. Skip it, and the brake stays.',
  wattsShown: 'watts shown',
  wattsShownAt: ({ at }: { at: string }) => `watts shown at ${at}`,
  wattsShownAtRpm: ({ at, rpm }: { at: string; rpm: number }) => `watts shown at ${at} and ${measures.rpm(rpm)}`,
  tryAnother: 'try another setting',
  alreadyListed: 'That setting is already on the list.',
  sameCadence: 'It takes two different cadences to tell the brakes apart.',
  whoRides: 'who is riding',
  firstCadence: 'first cadence',
  secondCadence: 'second cadence',
  firstAt: 'first at',
  thenAt: 'then at',
  feelAt: ({ feel, rpm }: { feel: Feel; rpm: number }) => `${names.feel({ feel })} at ${measures.rpm(rpm)}`,
  rough:
    'A rough estimate: it assumes a feel means the same effort for every rider and cadence, and knows the rider only from the model. Good for laying out a class, not for testing anyone.',

  // Why there is no result yet
  tooFewWatts: 'Enter at least two settings; more is better.',
  falls: ({ upper, lower }: { upper: string; lower: string }) =>
    `There are fewer watts at ${upper} than at ${lower}: read one of the two again.`,
  tooFewFeels: 'Enter at least two feels at different settings; all of them at both cadences is best.',
  wrongWay: 'The heavier feels are at lower settings: the knob seems to have been read the wrong way around.',

  // What comes of it
  changes: 'what it changes',
  noChange: ({ rider }: { rider: string }) => `The estimated effort of this ride for ${rider} stays the same.`,
  mostChange: ({ rider, block, at, now, before }: { rider: string; block: string; at: number; now: number; before: number }) =>
    `For ${rider} it changes most in ${block} at ${clock(at)}: an estimated effort of ${number(now, 1)} instead of ${number(before, 1)}.`,
  rideLabel: ({ rider }: { rider: string }) => `The estimated effort for ${rider} as it is.`,
  rideCaption: ({ rider, before }: { rider: string; before: boolean }) =>
    `planned effort, and dashed the estimated effort for ${rider}${before ? '; thin: as it was' : ''}`,
  use: 'use this calibration',
  cancel: 'cancel',
  baseMoves: ({ from, to }: { from: string; to: string }) => `Base moves from ${from} to ${to}.`,
  carried: ({ settings }: { settings: readonly string[] }) => `Not tried, so scaled from the watts before: ${settings.join(', ')}.`,

  // The brake
  brakeNoPair: ({ stays }: { stays: string }) => `${stays}: it takes the same settings at two cadences to tell.`,
  brakeOnePair: ({ stays }: { stays: string }) => `${stays}: one setting at both cadences is too few to tell.`,
  brakeUndecided: ({ stays, exponent }: { stays: string; exponent: number }) =>
    `${stays}: your answers don’t decide it (${grew(exponent)}).`,
  brakeStays: ({ brake }: { brake: keyof typeof BRAKES }) => `The brake stays ${BRAKES[brake]}`,
  brakeStaysFitted: ({ kind }: { kind: keyof typeof KINDS }) => `The brake stays as it was fitted, ${KINDS[kind]}`,
  brakeFits: ({ brake, exponent, impossible }: { brake: keyof typeof BRAKES; exponent: number; impossible: boolean }) =>
    `Your answers fit a ${BRAKES[brake]} brake (${grew(exponent)}).${impossible ? ` No brake has ${number(exponent, 1)}: read both cadences again.` : ''}`,
  brakeBetween: ({ exponent, error }: { exponent: number; error: number }) =>
    `Brake: between friction and magnetic, fitted from your answers. Watts grow with cadence to the power of ${number(exponent)}, give or take ${number(error)}, where friction is 1 and magnetic 2.`,
}
