import { duration, effort, effortRange, number, plural, setting, signedSetting } from '#words/forms.ts'
import { type KnobSize, measures } from './measures.ts'

/** What riders do that takes resistance. */
const DOING = {
  stands: 'stands',
  jumps: 'jumps',
  moves: 'moves out of the saddle',
  goesHard: 'goes hard',
  pedalsFast: 'pedals fast',
}

/** A range of settings, stated or told. */
interface Range {
  from: number
  to: number
  orMore?: boolean | undefined
}

/** What riders may have on; an end nobody knows is null. */
interface Standing {
  low: number | null
  nominal: number
  high: number | null
}

interface Efforts {
  from: number
  to: number
}

const move = ({ steps, ...scale }: KnobSize): string => {
  const size = measures.knob({ ...scale, steps: Math.abs(steps) })
  return steps > 0 ? `add ${size}` : `take ${size} off`
}

/** Checks of the resistance, and their repairs. */
export const checksKnob = {
  // The ends of the knob
  knobLoose: ({ block, size }: { block: string; size: KnobSize }) => `${block} takes off ${measures.knob(size)} more than the knob has.`,
  knobTight: ({ block, size }: { block: string; size: KnobSize }) => `${block} asks for ${measures.knob(size)} more than the knob has.`,
  stopAtLoosest: 'Stop at the knob’s minimum',
  capAtTightest: 'Cap it at the knob’s maximum',
  keptInKnob: ({ block }: { block: string }) => `Kept ${block} within the knob’s range`,

  // Where riders are told they should be
  checkpointMissed: ({
    block,
    told,
    reached,
    stepsPerUnit,
    off,
    byChange,
  }: {
    block: string
    told: Range
    reached: Standing
    stepsPerUnit: number
    off: number
    byChange: boolean
  }) =>
    `${block} says riders should be at ${measures.settingRange(told, stepsPerUnit)}, but the calls lead to ${measures.standing(reached, stepsPerUnit)}: ${
      byChange ? 'the change is' : 'they are'
    } off by ${signedSetting(off, stepsPerUnit)}.`,
  checkpointLoose: ({ block, told, reached, stepsPerUnit }: { block: string; told: Range; reached: Standing; stepsPerUnit: number }) => {
    const { low, high } = reached
    const left =
      low === null || high === null
        ? `at ${measures.standing(reached, stepsPerUnit)}`
        : `anywhere from ${setting(low, stepsPerUnit)} to ${setting(high, stepsPerUnit)}`
    return `${block} says riders should be at ${measures.settingRange(told, stepsPerUnit)}; the calls leave them ${left}.`
  },
  setCheckpoint: ({ told, stepsPerUnit }: { told: Range; stepsPerUnit: number }) =>
    `Set the checkpoint to ${measures.settingRange(told, stepsPerUnit)}`,
  checkpointSet: ({ block, told, stepsPerUnit }: { block: string; told: Range; stepsPerUnit: number }) =>
    `Set the checkpoint of ${block} to ${measures.settingRange(told, stepsPerUnit)}`,
  wideSpread: ({ seconds, size }: { seconds: number; size: KnobSize }) =>
    `For ${duration(seconds)} riders may be ${measures.knob(size)} apart; say where they should be.`,
  openEnd: ({ block, before, stepsPerUnit, seconds }: { block: string; before: Standing; stepsPerUnit: number; seconds: number }) =>
    `${block} builds on “${measures.standing(before, stepsPerUnit)}”, which has been open for ${duration(seconds)}; say where riders should be.`,
  callTotal: ({ total, stepsPerUnit }: { total: number; stepsPerUnit: number }) => `Call where to be: ${setting(total, stepsPerUnit)}`,
  calledTotal: ({ block, total, stepsPerUnit }: { block: string; total: number; stepsPerUnit: number }) =>
    `Called ${setting(total, stepsPerUnit)} in ${block}`,
  ownTotals: ({ block, own, told, stepsPerUnit }: { block: string; own: number; told: Standing; stepsPerUnit: number }) =>
    `You ride ${block} at ${setting(own, stepsPerUnit)} while the class is told ${measures.standing(told, stepsPerUnit)}; riders copy what they see.`,
  rideItAt: ({ total, stepsPerUnit }: { total: number; stepsPerUnit: number }) => `Ride it at ${setting(total, stepsPerUnit)}`,
  ownTotalSet: ({ block, total, stepsPerUnit }: { block: string; total: number; stepsPerUnit: number }) =>
    `Set your own resistance in ${block} to ${setting(total, stepsPerUnit)}`,

  // Too little
  underBase: ({ block, size }: { block: string; size: KnobSize }) => `${block} is ${measures.knob(size)} below base.`,
  allOffAtPace: ({ block }: { block: string }) => `${block} has no resistance and asks for a cadence: the pedals could run away.`,
  allOff: ({ block }: { block: string }) => `${block} has no resistance. Use it only to roll out easy.`,
  keepAtBase: 'Keep it at base',
  keptAtBase: ({ block }: { block: string }) => `Kept ${block} at base`,
  tooLight: ({ block, doing, at, needed }: { block: string; doing: keyof typeof DOING; at: KnobSize; needed: KnobSize }) =>
    `${block} ${DOING[doing]} at ${measures.overBase(at)}; it takes at least ${measures.overBase(needed)} for riders to stay in control.`,

  // Too much
  largestAdded: ({ block, size, most }: { block: string; size: KnobSize; most: KnobSize }) =>
    `${block} adds ${measures.knob(size)} in one call; ${measures.knob(most)} is the most riders find safely.`,
  easyTotal: ({ block, level, at, most }: { block: string; level: number; at: KnobSize; most: KnobSize }) =>
    `${block} is planned at ${number(level, 1)} of 10, but its resistance is ${measures.overBase(at)}; ${measures.overBase(most)} is the most for that.`,
  endsHeavy: ({ over, most }: { over: KnobSize; most: KnobSize }) =>
    `The class ends ${measures.overBase(over)}; ${measures.overBase(most)} or less lets the legs roll out.`,

  // Planned effort against what the bike asks for
  intentAgainstDemand: ({
    block,
    at,
    fromBase,
    rpm,
    rider,
    estimated,
    planned,
    change,
    reaches,
    fix,
    reason,
  }: {
    block: string
    at: KnobSize
    /** Whether the resistance is counted from base. */
    fromBase: boolean
    rpm: { from: number; to: number } | null
    rider: string
    estimated: Efforts
    planned: Efforts
    /** What would bring the two nearest to each other; null where nothing does. */
    change: KnobSize | null
    reaches: number
    /** Whether that closes it, can't be called, or stops short of it. */
    fix: 'closes' | 'builds' | 'short'
    reason: string | null
  }) => {
    const place = fromBase ? measures.overBase(at) : measures.knob(at)
    const said = `${block}, ${place}${rpm ? ` at ${measures.rpmRange(rpm, 0)}` : ''}, is about ${effortRange(estimated)} of 10 for ${rider} and you plan ${effortRange(planned)}`
    if (fix === 'closes' && change) return `${said}; ${move(change)}.`
    if (fix === 'builds' && change) {
      return `${said}; ${move(change)} would bring it to ${effort(reaches)}, but nearby calls build on each other, so there’s no one number to change.`
    }
    return `${said}${change ? `; ${move(change)} to get to ${effort(reaches)}` : ''}; ${reason}.`
  },
  planInstead: (levels: Efforts) => `Plan ${effortRange(levels)} instead`,
  plannedInstead: ({ block, ...levels }: Efforts & { block: string }) => `Set the effort of ${block} to ${effortRange(levels)}`,
  beyondCalibration: ({ block, others, from, to, unit }: { block: string; others: number; from: number; to: number; unit: string }) => {
    const blocks = others === 0 ? `${block} is` : `${block} and ${plural(others, 'more block', 'more blocks')} are`
    return `${blocks} outside the calibrated ${number(from)}–${number(to)} ${measures.unitOf(unit, true)} of this bike, so the effort is estimated by feel.`
  },

  // Why whole steps do not close a difference, as the end of a sentence
  knobLoosest: 'the knob is at its loosest',
  nothingOverBase: 'there is nothing left to take off above base',
  needs: ({ doing, least }: { doing: keyof typeof DOING; least: KnobSize }) =>
    `it ${DOING[doing]}, which takes at least ${measures.overBase(least)}`,
  knobEnds: ({ at, stepsPerUnit }: { at: number; stepsPerUnit: number }) => `the knob ends at ${setting(at, stepsPerUnit)}`,
  easyMost: ({ most }: { most: KnobSize }) => `${measures.overBase(most)} is the most for such an easy effort`,
  endMost: ({ most }: { most: KnobSize }) => `a class ends at no more than ${measures.overBase(most)}`,
  addedMost: ({ most }: { most: KnobSize }) => `${measures.knob(most)} is the most to add in one call`,
  toldThere: ({ told, stepsPerUnit }: { told: Range; stepsPerUnit: number }) =>
    `riders are told they should be at ${measures.settingRange(told, stepsPerUnit)} there`,
  stepTooCoarse: 'one step of this bike is too coarse to match it',
  nextStep: ({ level }: { level: number }) => `the next step of this bike is already ${effort(level)}`,
  onlyGuessed: 'outside the calibrated points the watts are only a guess, so more steps tell nothing',
  rampApart: 'effort and load don’t rise and fall together here, so no single change matches both ends',

  // On the bike the ride is shown for
  standsAt: ({ bike, block, total }: { bike: string; block: string; total: string }) => `On “${bike}”, ${block} is at ${total}.`,
  isAllOff: ({ bike, block }: { bike: string; block: string }) => `On “${bike}”, ${block} is all off.`,
  isByFeel: ({ bike, block }: { bike: string; block: string }) => `On “${bike}”, ${block} is ridden by feel.`,
}
