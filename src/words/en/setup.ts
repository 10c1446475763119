import { number, setting } from '#words/forms.ts'
import { measures } from './measures.ts'
import { names } from './names.ts'

/** The place of bikes, riders, and studio rules, and the bike itself. */

const PARTS = { bike: 'bike', riders: 'riders', rules: 'studio rules' }

const LEDES = {
  bike: 'Your bike’s resistance scale, and how heavy each setting is.',
  riders: 'The riders this ride’s estimated effort, heart rate, and reserve are modeled for.',
  rules: 'The numbers this studio plans by. Checks follow them; they warn and never block.',
}

const BRAKES = { friction: 'friction', magnetic: 'magnetic', between: 'between friction and magnetic', fitted: 'as fitted' }

const CALIBRATED = { watts: ', read off its console', feel: ', found by feel' }

const LIMITS = { min: 'lowest', base: 'base', max: 'highest' }

const LIMIT_HINTS = {
  min: 'Wheel running free.',
  base: 'Lightest setting where riders still control the pedals.',
  max: 'The end of the knob.',
}

type Knob = Parameters<typeof measures.settingOf>[1]

const at = (value: number, { stepsPerUnit }: Pick<Knob, 'stepsPerUnit'>): string => {
  const steps = value * stepsPerUnit
  const whole = Math.round(steps)
  // A setting between two steps, as an older file can hold, is a decimal.
  return Math.abs(steps - whole) < 1e-6 ? setting(whole, stepsPerUnit) : number(value)
}

export const setup = {
  heading: 'Bikes & riders',
  part: 'part',
  partName: ({ part }: { part: keyof typeof PARTS }) => PARTS[part],
  lede: ({ part }: { part: keyof typeof PARTS }) => LEDES[part],
  remove: 'remove',

  // What is saved for other rides
  onDevice: ({ title }: { title: string }) => `${title} on this device`,
  inUse: 'in this ride',
  use: 'use',
  takeKept: ({ name }: { name: string }) => `use ${name} for this ride`,
  removeKept: ({ name }: { name: string }) => `remove ${name} from this device`,
  nothingKept: 'Nothing can be saved in this window.',
  keepName: 'name to save them under',
  keepPlaceholder: 'name them',
  keptBikes: 'saved bikes',
  keptBikesEmpty: 'None yet. Save this bike, and you can plan other rides for it.',
  keepBike: ({ name }: { name: string }) => `save ${name}`,
  /** "¼ turn, 0 to 20, friction" */
  scale: ({ unit, stepsPerUnit, min, max, brake }: Knob & { min: number; max: number; brake: keyof typeof BRAKES }) =>
    `${stepsPerUnit === 1 ? `whole ${measures.unitOf(unit, true)}` : measures.settingOf(1, { unit, stepsPerUnit })}, ${at(min, { stepsPerUnit })} to ${at(max, { stepsPerUnit })}, ${BRAKES[brake]}`,

  // The bike
  bikeHeading: 'the bike for this ride',
  name: 'name',
  needsName: 'A bike needs a name.',
  unit: 'unit',
  unitHint: 'In the singular: turn, level, gear.',
  needsUnit: 'A scale needs a unit, such as turn or level.',
  steps: 'steps',
  perUnit: ({ unit }: { unit: string }) => `per ${measures.unitOf(unit, false)}`,
  stepsHint: '4 for quarters, 1 for whole ones.',
  limit: ({ which }: { which: keyof typeof LIMITS }) => LIMITS[which],
  limitHint: ({ which }: { which: keyof typeof LIMITS }) => LIMIT_HINTS[which],
  brake: 'brake',
  brakeName: ({ brake }: { brake: keyof typeof BRAKES }) => BRAKES[brake],
  cadenceTwice: ({ times, fitted }: { times: number; fitted: keyof typeof BRAKES | null }) => {
    const grows = times === 2 ? 'twice the watts' : times === 4 ? 'four times the watts' : `${number(times, 1)} times the watts`
    const said = `Twice the cadence, ${grows}.`
    if (fitted === null) return said
    return `${BRAKES[fitted].charAt(0).toUpperCase()}${BRAKES[fitted].slice(1)}, fitted from your readings. ${said}`
  },
  fittedExponent: ({ exponent, error }: { exponent: number; error: number }) =>
    `Watts grow with cadence to the power of ${number(exponent)}, give or take ${number(error)}; friction is 1, magnetic 2. Choosing either drops the fit.`,
  measuredAt: 'measured at',
  measuredHint: 'The cadence the table below was ridden at.',
  copyName: ({ name }: { name: string }) => `${name} (another)`,
  another: 'another bike',
  anotherAbout:
    'Resistance calls keep what they say in the bike’s unit, to the nearest step. They can weigh more or less on the legs; the estimated effort shows it.',
  copy: 'start from a copy of this one',
  typicalKnob: 'use the typical knob',

  // Watts by setting
  wattsHeading: 'watts by setting',
  typicalWatts: 'Typical values. Calibrate once for better estimates.',
  typicalSource: 'Common practice, no source.',
  wattsAre: ({ rpm, calibration }: { rpm: number; calibration: keyof typeof CALIBRATED | null }) =>
    `Watts at ${measures.rpm(rpm)}${calibration ? CALIBRATED[calibration] : ''}; between the points, a smooth curve that never falls.`,
  units: ({ unit }: { unit: string }) => measures.unitOf(unit, true),
  watts: 'watts',
  base: 'base',
  at: ({ value, stepsPerUnit }: { value: number; stepsPerUnit: number }) => at(value, { stepsPerUnit }),
  withUnit: ({ value, unit, stepsPerUnit }: Knob & { value: number }) =>
    `${at(value, { stepsPerUnit })} ${measures.unitOf(unit, value === 0 || value > 1)}`,
  wattsAt: ({ at: place }: { at: string }) => `watts at ${place}`,
  removePoint: ({ at: place }: { at: string }) => `remove the point at ${place}`,
  addPoint: 'add a point at',
  pointExists: 'There’s already a point at that setting.',
  curve: ({ rpm, points }: { rpm: number; points: readonly { watts: number; at: string }[] }) =>
    `Power by setting at ${measures.rpm(rpm)}: ${points.map((point) => `${number(point.watts, 1)} watts at ${point.at}`).join(', ')}.`,
  curveCaption: ({ rpm, unit, before }: { rpm: number; unit: string; before: boolean }) =>
    `watts at ${measures.rpm(rpm)} by ${measures.unitOf(unit, true)}; the dotted line is base${before ? '; thin: as it was' : ''}`,

  // What cannot be
  outOfRange: ({ min, max }: { min: string; max: string }) => `This bike goes from ${min} to ${max}.`,
  belowZero: 'A setting can’t be below 0.',
  aboveThousand: 'A setting can be at most 1000.',
  limitsCrossed: ({ min, max }: { min: number; max: number }) =>
    `The lowest setting (${number(min)}) must be below the highest (${number(max)}).`,
  baseOutside: ({ base, min, max }: { base: number; min: number; max: number }) =>
    `The base (${number(base)}) must be between ${number(min)} and ${number(max)}.`,
  stepsDontFit: ({ stepsPerUnit, unit, setting: value }: Knob & { setting: number }) =>
    `With ${number(stepsPerUnit)} steps per ${measures.unitOf(unit, false)} there is no ${number(value)}; change that setting first.`,
  wattsFall: ({ high, low, watts }: { high: string; low: string; watts: number }) =>
    `Watts rise with the setting: ${high} can’t have fewer than the ${number(watts, 1)} at ${low}.`,

  // What settings feel like
  feelHeading: 'what settings feel like',
  feelAbout: 'A turn means different things on each bike; a feel does not. Calibrating by feel fills these in.',
  feel: 'feel',
  settingOfFeel: ({ feel }: { feel: string }) => `setting of ${feel}`,
  removeFeel: ({ feel }: { feel: string }) => `remove ${feel}`,
  feelToAdd: 'feel to add',
  whereFeel: ({ feel }: { feel: string }) => `where ${feel} is`,
  /** Ours by name, another as it was written. */
  feelName: ({ feel }: { feel: Parameters<typeof names.feel>[0]['feel'] }) => names.feel({ feel }),
}
