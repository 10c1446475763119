import { and, clock, duration, number, percent, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

/** Fitting songs to the class and blocks to their songs; a ride in another length; another song for the same blocks. */

const { eights } = measures

const longer = (seconds: number) => `${duration(Math.abs(seconds))} ${seconds < 0 ? 'shorter' : 'longer'}`

export const fit = {
  // Blocks to their song
  needsBeat: 'Only a song with a known beat can be fitted.',
  noBlocks: 'There are no blocks to fit.',
  inSeconds: ({ block }: { block: string }) => `${block} is measured in seconds, so it has no eights to fit.`,
  allLocked: 'Every block keeps its length, so nothing can give.',
  /** What the blocks that may change have to fill, and what they can fill next to it. */
  outOfReach: ({ room, nearest, unit }: { room: number; nearest: readonly number[]; unit: number }) => {
    const song = `The song leaves ${eights(room, unit)}`
    return nearest.length === 0
      ? `${song}, and no lengths of these blocks come near.`
      : `${song}; the nearest these blocks can fill ${nearest.length === 1 ? 'is' : 'are'} ${and(nearest.map((counts) => eights(counts, unit)))}.`
  },
  change: ({ block, from, to, unit }: { block: string; from: number; to: number; unit: number }) =>
    `${block} from ${eights(from, unit)} to ${eights(to, unit)}`,
  fittedSection: ({ section }: { section: string }) => `Fitted ${section} to its song`,
  fittedSectionTo: ({ section, counts, unit }: { section: string; counts: number; unit: number }) =>
    `Fitted ${section} to ${eights(counts, unit)} of its song`,
  endAfter: ({ counts, unit }: { counts: number; unit: number }) => `End the song after ${eights(counts, unit)}`,

  // The ride to its class length
  trimmed: ({
    song,
    from,
    to,
    unit,
    seconds,
    changes,
  }: {
    song: string
    from: number
    to: number
    unit: number
    seconds: number
    changes: readonly string[]
  }) =>
    `${song} ${to < from ? 'ends' : 'plays on'} at ${eights(to, unit)} instead of ${eights(from, unit)}, ${longer(seconds)}${changes.length === 0 ? '' : `: ${changes.join(', ')}`}.`,
  fittedRide: ({ seconds }: { seconds: number }) => `Fitted the ride to ${duration(seconds)}`,
  nothingGives: 'Nothing to adjust: these songs have no beat, have only locked blocks, or already play to the end.',
  /** Seconds left of the class length by each way that comes near; below zero over it. */
  noneInside: ({ under, slacks }: { under: number; slacks: readonly number[] }) =>
    `Ending on a phrase, no choice comes within ${duration(under)} of the class length; the nearest ${slacks.length === 1 ? 'is' : 'are'} ${and(slacks.map((slack) => `${duration(Math.abs(slack))} ${slack < 0 ? 'over' : 'under'}`))}.`,

  // The ride in another length
  nothingPlanned: 'Nothing is planned yet to make another version of.',
  variantOff: ({ minutes, slack }: { minutes: number; slack: number }) =>
    `The nearest these songs come to ${minutes} minutes is ${duration(Math.abs(slack))} ${slack < 0 ? 'over' : 'under'}.`,
  noVariant: ({ minutes }: { minutes: number }) =>
    `No choice of these songs makes a ${minutes}-minute class with its warm-up and cool-down.`,
  variantProblem: ({ problem }: { problem: string }) => `Every choice of these songs has a problem. This one: ${problem}`,
  endTooShort: ({ end, minutes, has, needs }: { end: 'warmUp' | 'coolDown'; minutes: number; has: number; needs: number }) =>
    `In ${minutes} minutes these songs leave a ${end === 'warmUp' ? 'warm-up' : 'cool-down'} of ${duration(has)}, and it needs ${duration(needs)}.`,
  otherMinutes: ({ minutes, was }: { minutes: number; was: number }) => `${minutes} minutes instead of ${was}.`,
  leftOut: ({ song, seconds }: { song: string; seconds: number }) => `${song} is left out (${duration(seconds)}).`,
  repeated: ({ song, times }: { song: string; times: number }) =>
    `${song} plays ${times === 2 ? 'twice' : `${number(times)} times`}; swap one for a song of similar length.`,
  repeatedEnd: ({ end, song, times }: { end: 'start' | 'end'; song: string; times: number }) =>
    `The easy ${end} of ${song} comes ${times === 1 ? 'once' : `${number(times)} times`} more; swap it for a song of similar length.`,
  statesTotal: ({ block, total }: { block: string; total: string }) =>
    `${block} states its resistance, ${total}, because what came before it is gone.`,
  staysWarmUp: ({ is, was }: { is: number; was: number }) => `Warm-up ${percent(is)} of the class, was ${percent(was)}.`,
  staysCoolDown: ({ is, was }: { is: number; was: number }) => `Cool-down ${percent(is)}, was ${percent(was)}.`,
  staysFinish: ({ song, same }: { song: string; same: boolean }) => `Finish: ${song}${same ? ', as before' : ''}.`,
  staysShape: ({ is, was, work, workWas }: { is: string; was: string | null; work: number; workWas: number }) =>
    `Shape: ${is}${was === null ? ', as before' : `, was ${was}`}; ${percent(work)} of it is work, was ${percent(workWas)}.`,

  // What follows on the clock
  followsStarts: ({ seconds }: { seconds: number }) =>
    `What follows starts ${duration(Math.abs(seconds))} ${seconds > 0 ? 'later' : 'earlier'}.`,
  rideEnds: ({ at, slack }: { at: number; slack: number }) =>
    `The ride ends at ${clock(at)}, ${duration(Math.abs(slack))} ${slack < 0 ? 'over' : 'under'} class length.`,

  // Another song for the same blocks
  fallsOff: ({ block, round, counts, unit }: { block: string; round: number | null; counts: number; unit: number }) =>
    `All of ${block}${round === null ? '' : ` in round ${round}`} falls off the end (${eights(counts, unit)}).`,
  fallsOffPart: ({ block, round, counts, unit }: { block: string; round: number | null; counts: number; unit: number }) =>
    `The last ${eights(counts, unit)} of ${block}${round === null ? '' : ` in round ${round}`} fall off the end.`,
  leftOpen: ({ counts, unit }: { counts: number; unit: number }) => `${eights(counts, unit)} of the song stay empty.`,
  songLonger: ({ seconds }: { seconds: number }) => `The song gets ${longer(seconds)}.`,
  legsMove: ({ from, to }: { from: number; to: number }) => `Cadence goes from ${number(from, 0)} to ${measures.rpm(to)}.`,

  // Why a song stands where it does among those to swap in
  reasons: ({ items }: { items: readonly string[] }) => items.join(', '),
  sameCadence: 'the same cadence',
  cadenceApart: ({ rpm }: { rpm: number }) => `${measures.rpm(Math.abs(rpm), 1)} ${rpm > 0 ? 'faster' : 'slower'}`,
  suitsTerrain: ({ rpm }: { rpm: number }) => `${measures.rpm(rpm)}, right for its terrain`,
  apartFromTerrain: ({ rpm, apart }: { rpm: number; apart: number }) =>
    `${measures.rpm(rpm)}, ${number(Math.abs(apart), 1)} too ${apart > 0 ? 'fast' : 'slow'} for its terrain`,
  sameLength: 'same length',
  lengthApart: ({ eights: apart }: { eights: number }) =>
    `${plural(Math.abs(apart), 'eight', 'eights')} ${apart > 0 ? 'longer' : 'shorter'}`,
  drive: ({ apart }: { apart: number }): string => (apart === 0 ? 'same energy' : apart > 0 ? 'more energy' : 'less energy'),
  clean: 'clean',
  playedLately: 'played lately',

  // On screen: fit to class length
  slotTitle: 'fit to class length',
  slotWhere: ({ total, slot, slack }: { total: number; slot: number; slack: number }) =>
    `${clock(total)} planned, ${clock(slot)} class length, ${duration(Math.abs(slack))} ${slack < 0 ? 'over' : 'left'}`,
  use: 'use',
  nearest: 'the nearest',
  slack: ({ seconds }: { seconds: number }) => `${duration(Math.abs(seconds))} ${seconds < 0 ? 'over' : 'under'}`,
  songsEnd: 'Songs end on a different phrase; blocks change as little as possible.',
  thenEnds: 'The ride then ends at',
  thenEndsSlack: ({ seconds }: { seconds: number }) => `${duration(Math.abs(seconds))} ${seconds < 0 ? 'over' : 'under'} class length`,
  nothingToDo: ({ seconds }: { seconds: number }) => `Nothing to do: the ride ends ${duration(Math.abs(seconds))} under class length.`,
  showSong: 'show the song',
  fromTo: ({ from, to, unit }: { from: string; to: string; unit: number }) => `${from} → ${to} ${unit === 6 ? 'sixes' : 'eights'}`,
  longer: ({ seconds }: { seconds: number }) => longer(seconds),
  blockFromTo: ({ block, from, to }: { block: string; from: string; to: string }) => `${block} ${from} → ${to}`,

  // On screen: another length
  lengthTitle: 'a shorter or longer version',
  lengthWhere: ({ title, minutes }: { title: string; minutes: number }) => `of “${title}”, ${minutes} minutes`,
  saveAsRide: 'save as a new ride',
  minutes: 'minutes',
  working: 'Working it out …',
  whatStays: 'what stays',
  whatChanges: 'what changes',
  cannotKeep: 'This window can’t save anything. Save the ride as a file before you open another.',
  madeFrom: ({ title, parent }: { title: string; parent: string }) => `Made “${title}” from “${parent}”`,
  versionOf: ({ minutes }: { minutes: number }) => `A ${minutes}-minute version`,

  // On screen: any proposal
  cancel: 'cancel',
  close: 'close',
}
