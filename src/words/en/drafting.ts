import { clock, duration, effortRange, number, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

/** The place where a ride is planned: the stage, what is over and under it, and what is announced there. */

const REST = { openTail: 'open', briefing: 'welcome', clearUp: 'wipe-down' }

export const drafting = {
  details: 'details',

  // The figures over the stage.
  total: 'ride time',
  slack: 'time left',
  over: ({ over, slot }: { over: number; slot: number }) => `${duration(over)} over ${clock(slot)}`,
  under: ({ under, slot }: { under: number; slot: number }) => `${duration(under)} under ${clock(slot)}`,
  work: 'work',
  easy: 'easy',
  workToEasy: 'work : easy',
  ratio: ({ ratio }: { ratio: number }) => `${number(ratio, 2)} : 1`,
  load: 'load',
  loadMeans: 'Effort times minutes, added up over the ride: an estimate to compare your own classes by.',

  // The chart.
  lines: 'lines of the chart',
  planned: 'planned effort',
  whoseLines: 'whose lines',
  regularRider: 'regular rider',
  allRiders: 'all riders',
  drawing: 'drawing the chart…',
  overview: 'part of the ride on the stage',
  overviewAt: ({ from, to }: { from: number; to: number }) => `${number(from, 0)} to ${number(to, 0)} minutes`,

  // Songs.
  song: ({ number: at, name }: { number: number; name: string }) => `song ${number(at)}, ${name}`,
  noSong: 'no song yet',
  empty: 'empty',
  songTitle: ({ name, artist }: { name: string; artist: string }) => `${name}${artist && `, ${artist}`}. Double-click to zoom to it.`,
  timed: ({ length }: { length: number }) => `timed, ${duration(length)}`,
  noTempo: ({ length }: { length: number }) => `tempo unknown, ${duration(length)}`,
  offBeat: 'off the beat',
  leadFoot: ({ foot }: { foot: string }) => `${foot} foot`,
  counted: ({ counts, unit, length }: { counts: number; unit: number; length: number }) =>
    `${measures.eights(counts, unit)}, ${duration(length)}`,
  phrase: ({ number: at }: { number: number }) => `phrase ${number(at)}`,
  eight: ({ number: at, unit }: { number: number; unit: number }) => `${unit === 6 ? 'six' : 'eight'} ${number(at)}`,

  // Blocks.
  blocks: 'blocks in playing order',
  emptyRide: 'This ride is empty. Add a song, then tap or drag blocks from below.',
  rest: ({ rest, length }: { rest: keyof typeof REST; length: number }) => `${REST[rest]} ${duration(length)}`,
  fillHere: 'tap a block below or drag it here',
  needsPractice: 'needs practice',
  hands: ({ hands }: { hands: string }) => `hands ${hands}`,
  move: ({ move, counts }: { move: string; counts: number }) => `${move} on ${number(counts)}`,
  rounds: ({ label, rounds }: { label: string; rounds: number }) => `${label && `${label}, `}${plural(rounds, 'round', 'rounds')}`,
  leads: ({ name }: { name: string }) => `${name} leads`,
  leadsAndSpeaks: ({ leads, speaks }: { leads: string; speaks: string }) => `${leads} leads, ${speaks} speaks`,
  /** A block in one sentence, for those who hear the stage. */
  spokenBlock: ({ name, posture, at, length, effort, call, total, round, leader, needsPractice }: SpokenBlock) =>
    [
      name,
      posture,
      `at ${clock(at)}`,
      length,
      `effort ${effortRange(effort).replace('–', ' to ')}`,
      call,
      `resistance ${total}`,
      round && `round ${number(round.at)} of ${number(round.of)}`,
      leader,
      needsPractice && 'needs practice',
    ]
      .filter((part) => part)
      .join(', '),
  talk: 'what is said, each as long as it takes; hatched where it collides',
  landed: ({ place, length }: { place: string; length: string }) => `${place}, ${length}`,

  // Adding and changing.
  tray: 'blocks to add',
  addedPast: ({ change, over }: { change: string; over: number }) => `${change}, ${duration(over)} past the end of its song`,
  runsPast: ({ name, over }: { name: string; over: number }) => `“${name}” runs ${duration(over)} past the end of its song.`,
  noChange: 'No change. It’s already set, or there’s no room.',
  /** After a change: what it did, where the thing now starts, and what is left of the class. */
  done: ({ change, start, total, slack }: { change: string; start: number | undefined; total: number; slack: number }) =>
    `${change}. ${start === undefined ? '' : `It starts at ${clock(start)}. `}The ride is ${clock(total)}, ${
      slack < 0 ? `${duration(-slack)} over` : `${duration(slack)} left`
    }.`,
}

interface SpokenBlock {
  name: string
  posture: string
  /** Seconds on the ride's clock. */
  at: number
  length: string
  effort: { from: number; to: number }
  call: string
  total: string
  round: { at: number; of: number } | undefined
  leader: string
  needsPractice: boolean
}
