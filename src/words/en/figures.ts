import { duration, number, percent, plural, setting } from '#words/forms.ts'
import { type KnobSize, measures } from './measures.ts'

/** What the feels are like that a rider can find on any bike. */
const FEELS = {
  base: 'just enough to control the pedals; nothing bounces, nothing pushes back',
  'easy flat': 'a light road; you can chat',
  'brisk flat': 'a road with some grip; you still talk in full sentences',
  'light hill': 'the legs have to push; sentences get short',
  'solid hill': 'short phrases; you could hold it for a song',
  'heavy hill': 'one word at a time; you could hold it for a minute or two',
}

/** What the figures of a class say in words. */
export const figures = {
  // Its shape
  noPeak: 'No peak stands out.',
  shape: ({ peaks, lastHardest, longestRest }: { peaks: number; lastHardest: number | null; longestRest: number | null }) =>
    `${[
      plural(peaks, 'peak', 'peaks'),
      ...(lastHardest === null ? [] : [`the last of the hardest efforts at ${percent(lastHardest)} of the ride`]),
      ...(longestRest === null ? [] : [`the longest recovery at ${percent(longestRest)}`]),
    ].join(', ')}.`,

  // What makes it hard
  hardShare: ({ share }: { share: number }) => `${percent(share)} of the time at hard effort`,
  longestHard: ({ seconds }: { seconds: number }) => `a hard effort of ${duration(seconds)}`,
  noRecovery: 'a hard effort with no recovery',
  shortestRecovery: ({ seconds }: { seconds: number }) => `a recovery of ${duration(seconds)}`,
  changesPerMinute: ({ changes }: { changes: number }) => `${number(changes, 1)} changes of posture or move per minute`,
  fastestMove: ({ counts }: { counts: number }) => `a move on ${plural(counts, 'count', 'counts')}`,
  longestStanding: ({ seconds }: { seconds: number }) => `${duration(seconds)} of standing`,
  highestTurns: ({ size }: { size: KnobSize }) => `resistance of ${measures.knob(size)} over base`,
  heaviest: 'the heaviest resistance',
  cadenceOutside: ({ rpm }: { rpm: number }) => `legs ${measures.rpm(rpm)} outside their range`,
  doubleTimeShare: ({ share }: { share: number }) => `${percent(share)} in double time`,

  // Estimates for riders
  feelMeans: ({ feel }: { feel: keyof typeof FEELS }) => FEELS[feel],
  /** What the ranges hold and allow for, and what would narrow them. */
  ranges: ({
    watts,
    typical,
    capacity,
    calibrate,
    test,
  }: {
    watts: number
    typical: boolean
    capacity: number
    calibrate: boolean
    test: boolean
  }) => {
    const whose = typical ? 'the watts of a bike nobody has calibrated' : 'the bike’s watts'
    const held = `Ranges hold for nine of ten such riders: they allow for ${percent(watts)} either way in ${whose}, ${percent(capacity)} in what riders can do, and what the models leave open.`
    if (calibrate && test) return `${held} Calibrate the bike by its watts and enter riders’ test results to narrow them.`
    if (calibrate) return `${held} Calibrate the bike by its watts to narrow them.`
    return test ? `${held} Enter riders’ test results to narrow them.` : held
  },

  /** On another bike: what a reading comes to. */
  noResistance: 'no resistance',
  sameWatts: 'the same watts',
  byRounding: ({ watts, more }: { watts: number; more: boolean }) => `${number(watts, 0)} W ${more ? 'more' : 'less'} by rounding`,
  beyondMeasured: ({ above }: { above: boolean }) => `${above ? 'above' : 'below'} what the bikes were measured for`,
  /** What the instructor rides beside what the class is told. */
  youRide: ({ steps, stepsPerUnit }: { steps: number; stepsPerUnit: number }) => `you ${setting(steps, stepsPerUnit)}`,
}
