import { and, capitalized, clock, duration, effort, number, percent, plural } from '#words/forms.ts'
import { type KnobSize, measures } from './measures.ts'

const CLASSES = { beginner: 'beginner classes', mixed: 'mixed classes', advanced: 'advanced classes' }

const SIDES = { left: 'left', right: 'right' }
type Side = keyof typeof SIDES

/** A time, or that there is none. */
const timeOn = (seconds: number): string => (seconds < 0.5 ? 'none' : duration(seconds))

/** Checks of the class as a whole, of its songs, and of what riders can take. */
export const checksRide = {
  // Nothing there yet
  noSections: 'This ride has no songs yet.',
  noBlocks: ({ song }: { song: string }) => `${capitalized(song)} has no blocks yet.`,

  // Class length
  slotOverrun: ({ over, length }: { over: number; length: number }) =>
    `The ride is ${duration(over)} over the class length of ${duration(length)}.`,
  slotUnused: ({ left }: { left: number }) => `${duration(left)} of class time is still empty.`,

  // Where songs start and end
  nothingRidden: ({ song }: { song: string }) => `Nothing is left of ${song} between its start point and its end point.`,
  outPastSong: ({ song, counts, unit }: { song: string; counts: number; unit: number }) =>
    `The end point of ${song} is ${measures.eights(counts, unit)} past the end of the music.`,
  endAtLastEight: 'End at the last whole eight of the song',
  endedAtLastEight: 'Moved the end point to the last whole eight of the song',
  openTail: ({ song, tail }: { song: string; tail: string }) => `Nothing is planned for the last ${tail} of ${song}.`,
  beyondOut: ({ song, by }: { song: string; by: string }) => `The blocks of ${song} run ${by} past its end point.`,
  beyondEnd: ({ song, by }: { song: string; by: string }) => `The blocks of ${song} run ${by} past its end.`,
  endWithLastBlock: 'End the song with its last block',
  endedWithLastBlock: 'Moved the end point to the end of the last block',
  leaveOut: ({ block }: { block: string }) => `Leave out ${block}`,
  leftOut: ({ block }: { block: string }) => `Left out ${block}`,
  leaveOutRound: 'Leave out the last round',
  leftOutRound: 'Left out the last round',
  deepCrossfade: ({ song, before, seconds }: { song: string; before: string; seconds: number }) =>
    `The crossfade into ${song} takes ${duration(seconds)} off ${before}, more than its last block.`,
  shortenCrossfade: ({ seconds }: { seconds: number }) => `Shorten the crossfade to ${duration(seconds)}`,
  shortenedCrossfade: ({ seconds }: { seconds: number }) => `Shortened the crossfade to ${duration(seconds)}`,
  crookedBlock: ({ block, counts, unit }: { block: string; counts: number; unit: number }) =>
    `${block} is ${measures.eights(counts, unit)}, not whole ${unit === 6 ? 'sixes' : 'eights'}.`,
  makeLength: ({ counts, unit }: { counts: number; unit: number }) => `Make it ${measures.eights(counts, unit)}`,
  madeLength: ({ block, counts, unit }: { block: string; counts: number; unit: number }) =>
    `Made ${block} ${measures.eights(counts, unit)}`,
  snapSong: ({ unit }: { unit: number }) => `Snap every block of the song to ${unit === 6 ? 'sixes' : 'eights'}`,
  snappedSong: ({ unit }: { unit: number }) => `Snapped every block of the song to ${unit === 6 ? 'sixes' : 'eights'}`,

  // Warm-up, work, and recovery
  noWarmUp: ({ need }: { need: number }) => `There is no warm-up; ${duration(need)} is usual for this class.`,
  shortWarmUp: ({ have, need }: { have: number; need: number }) =>
    `The warm-up lasts ${duration(have)}; ${duration(need)} is usual for this class.`,
  noCoolDown: ({ need }: { need: number }) => `There is no cool-down; ${duration(need)} is usual for this class.`,
  shortCoolDown: ({ have, need }: { have: number; need: number }) =>
    `The cool-down lasts ${duration(have)}; ${duration(need)} is usual for this class.`,
  workShare: ({ share, from, level, most }: { share: number; from: number; level: keyof typeof CLASSES; most: number }) =>
    `${percent(share)} of the riding is at effort ${effort(from)} or higher; ${percent(most)} is usual in ${CLASSES[level]}.`,
  /** From one block to another where the effort runs over several; all out where no effort is given. */
  recoveryDebt: ({
    block,
    last,
    work,
    at,
    have,
    need,
  }: {
    block: string
    last?: string | undefined
    work: number
    at: number | null
    have: number | null
    need: number
  }) =>
    `${block}${last === undefined ? '' : ` to ${last}`} is ${duration(work)} ${at === null ? 'all out' : `at effort ${number(at, 1)}`} with ${
      have === null ? 'no recovery' : `${duration(have)} of recovery`
    } after it; it needs ${duration(need)}.`,
  giveFromNext: ({ block, next, length }: { block: string; next: string; length: string }) => `Give ${block} ${length} of ${next}`,
  gaveFromNext: ({ block, next, length }: { block: string; next: string; length: string }) => `Gave ${block} ${length} of ${next}`,
  recoveriesShrink: ({ work, rest }: { work: readonly number[]; rest: readonly number[] }) =>
    `Hard efforts get longer (${work.map(duration).join(', ')}) while recoveries get shorter (${rest.map(duration).join(', ')}).`,
  longStanding: ({ seconds, most }: { seconds: number; most: number }) =>
    `Riders are out of the saddle for ${duration(seconds)} without sitting down; ${duration(most)} is the most.`,
  reserveRunsOut: ({
    rider,
    block,
    at,
    may,
    models,
    of,
    less,
  }: {
    rider: string
    block: string
    at: number
    may: boolean
    models: number
    of: number
    less: KnobSize | null
  }) =>
    `${capitalized(rider)} ${may ? 'may run' : 'runs'} out of legs in ${block} at ${clock(at)}${models === of ? '' : `, by ${models} of ${of} models`}; ${
      less === null ? 'it needs an easier block or a longer recovery before it' : `${measures.knob(less)} less would get them through`
    }.`,
  offerEasier: ({ words }: { words: string }) => `Offer “${words}”`,
  offeredEasier: ({ block }: { block: string }) => `Offered an easier option in ${block}`,

  // How hard the class is
  difficultyForLevel: ({
    points,
    level,
    most,
    reasons,
  }: {
    points: number
    level: keyof typeof CLASSES
    most: number
    reasons: readonly string[]
  }) => `Difficulty ${number(points, 0)} of 100; ${CLASSES[level]} usually stay at ${most} or less. Mostly because of ${and(reasons)}.`,
  planEffort: ({ block, level }: { block: string; level: number }) => `Plan ${effort(level)} in ${block}`,
  plannedEffort: ({ block, level }: { block: string; level: number }) => `Set the effort of ${block} to ${effort(level)}`,
  slowMoves: ({ counts, slower }: { counts: number; slower: number }) => `Slow ${counts}-count moves to ${slower}`,
  slowedMoves: ({ counts, slower }: { counts: number; slower: number }) => `Slowed ${counts}-count moves to ${slower}`,

  // Left and right
  sideBalance: ({ more, most, less, least }: { more: Side; most: number; less: Side; least: number }) =>
    `Accents: ${number(most)} on the ${SIDES[more]} foot, ${number(least)} on the ${SIDES[less]}.`,
  holdBalance: ({ more, most, less, least }: { more: Side; most: number; less: Side; least: number }) =>
    `One-sided holds add up to ${timeOn(most)} on the ${SIDES[more]} and ${timeOn(least)} on the ${SIDES[less]}.`,
  leadWith: ({ song, foot }: { song: string; foot: Side }) => `Lead ${song} with the ${SIDES[foot]} foot`,
  ledWith: ({ song, foot }: { song: string; foot: Side }) => `Changed the lead foot of ${song} to ${SIDES[foot]}`,
  alternate: ({ block }: { block: string }) => `Alternate sides in ${block}`,
  alternated: ({ block }: { block: string }) => `Alternated sides in ${block}`,
  otherSide: ({ block, side }: { block: string; side: Side }) => `Go to the ${SIDES[side]} in ${block}`,
  wentOtherSide: ({ block, side }: { block: string; side: Side }) => `Changed the side in ${block} to ${SIDES[side]}`,

  // Comfort and safety
  water: ({ seconds }: { seconds: number }) => `No water break for ${duration(seconds)}. In a warm room, sooner is better.`,
  drinkIn: ({ block }: { block: string }) => `Drink in ${block}`,
  markedDrink: ({ block }: { block: string }) => `Marked a water break in ${block}`,
  hearing: ({ level, minutes }: { level: number; minutes: number }) =>
    `At the ${number(level)} dB measured in such classes, ${number(minutes, 0)} minutes are a day’s worth of noise; keep the music down.`,
  briefing: 'Newcomers need the brake, their base, and the bike setup explained before the first song.',
  addBriefing: ({ seconds }: { seconds: number }) => `Add a welcome of ${duration(seconds)}`,
  addedBriefing: 'Added a welcome',
  newcomers: ({ from }: { from: number }) =>
    `Newcomers build up slowly: before the first effort of ${effort(from)} or more, give them an effort cap and permission to sit out.`,
  allOutCare: ({ block }: { block: string }) =>
    `${block} is all out: riders with symptoms or a known condition need clearance if your studio’s screening requires it; stop on dizziness, chest pain, or unusual shortness of breath.`,
  walkStanding: ({ block }: { block: string }) => `Walking the room in ${block} leaves riders standing; a seated block is better for it.`,
  walkShort: ({ block, seconds, needed }: { block: string; seconds: number; needed: number }) =>
    `${block} lasts ${duration(seconds)}; walking the room takes ${duration(needed)}.`,

  // Two instructors
  handOverInPush: ({ name, voice, block }: { name: string; voice: boolean; block: string }) =>
    `${name} ${voice ? 'takes the mic' : 'takes over'} at ${block}, in the middle of a push; switch where riders recover.`,
  moveHandOver: ({ block }: { block: string }) => `Switch at ${block}`,
  movedHandOver: ({ block }: { block: string }) => `Moved the switch to ${block}`,
  handOverOffPhrase: ({
    name,
    voice,
    block,
    counts,
    unit,
    after,
  }: {
    name: string
    voice: boolean
    block: string
    counts: number
    unit: number
    after: boolean
  }) =>
    `${name} ${voice ? 'takes the mic' : 'takes over'} at ${block}, ${measures.eights(counts, unit)} ${after ? 'after' : 'before'} the end of a phrase.`,
  leaderWithoutBlock: ({ name }: { name: string }) => `${name} leads no block and speaks in none; select blocks and give them to ${name}.`,
  teachWithout: ({ name }: { name: string }) => `Teach without ${name}`,
  taughtWithout: ({ name }: { name: string }) => `Removed ${name} from this ride`,
  leadAndVoiceApart: ({ leads, speaks, block, others }: { leads: string; speaks: string; block: string; others: number }) =>
    `${leads} leads and ${speaks} speaks in ${block}${
      others === 0 ? '' : others === 1 ? ' and the block after it' : ` and the ${plural(others, 'block', 'blocks')} after it`
    }: agree on who counts and who calls the end.`,
  giveMic: ({ name }: { name: string }) => `Give ${name} the mic`,
  gaveMic: ({ name }: { name: string }) => `Gave ${name} the mic`,
}
