import { and, clock, duration, number, percent, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

/** A draft made for the instructor: what it is made of and why, and the screen it is offered on. */

const AIMS = {
  mixed: 'a bit of everything',
  climbs: 'climbs',
  intervals: 'intervals',
  endurance: 'endurance',
  rhythm: 'riding on the beat',
}

const LEVEL_CLASSES = { beginner: 'a beginner class', mixed: 'a mixed class', advanced: 'an advanced class' }

const NAMES = {
  lowHill: 'low hill',
  seatedClimb: 'seated climb',
  standingClimb: 'standing climb',
  hoverClimb: 'hover climb',
  hover: 'hover',
  standingFlat: 'standing flat',
  standingRun: 'standing run',
  easyFlat: 'easy flat',
  flat: 'flat',
  briskFlat: 'brisk flat',
  strongFlat: 'strong flat',
  steadyFlat: 'steady flat',
  tempo: 'tempo',
  seatedHold: 'seated hold',
  standingHold: 'standing hold',
  recover: 'recovery',
  rollOut: 'roll-out',
  stretch: 'stretch',
  jumps: 'jumps',
  push: 'push',
  standingPush: 'standing push',
  surge: 'surge',
  standingSurge: 'standing surge',
}

const GROUNDS = {
  climb: 'seated and standing climb',
  seatedClimb: 'seated climb',
  tempo: 'tempo',
  rollOut: 'roll-out',
  rollOutAndStretch: 'roll-out and stretch',
  recovery: 'recovery',
  recoveryWithFlat: 'recovery, with an easy flat',
  flat: 'flat',
  hold: 'seated hold',
  stretch: 'stretch',
}

const EXTRAS = {
  push: 'pushes',
  surge: 'surges',
  tallClimb: 'standing climbs',
  run: 'standing runs',
  tallFlat: 'standing flats',
}

const STRIKES = { 0.5: 'at half time', 1: 'on the beat', 2: 'at double time' }

const placed = (rests: readonly { song: string; share: number }[]) => and(rests.map(({ song, share }) => `${song} at ${percent(share)}`))

export const drafts = {
  // What the ride is made of
  shape: ({
    warmUp,
    waves,
    coolDown,
    level,
    minutes,
  }: {
    warmUp: number
    waves: number
    coolDown: number
    level: keyof typeof LEVEL_CLASSES
    minutes: number
  }) => {
    const work =
      waves === 0 ? 'steady riding' : waves === 1 ? 'one wave of work' : `${waves} waves of work, each higher than the one before`
    return `Warm-up of ${duration(warmUp)}, ${work}, and a cool-down of ${duration(coolDown)}: what ${LEVEL_CLASSES[level]} of ${minutes} minutes needs at either end.`
  },
  restsOnly: ({ rests }: { rests: readonly { song: string; share: number }[] }) => `Riders come down in ${placed(rests)} of the class.`,
  noFinish: 'No song is a finish: there are too few songs of work for one.',
  peak: ({ song, share, rests }: { song: string; share: number; rests: readonly { song: string; share: number }[] }) => {
    const peak = `The finish is ${song}, which ends at ${percent(share)} of the class: late enough to be the peak, early enough to come down from`
    return rests.length === 0
      ? `${peak}.`
      : `${peak}; ${placed(rests)} ${rests.length === 1 ? 'is' : 'are'} easy, so riders get there with legs left.`
  },
  ground: ({
    tempoKnown,
    onBeat,
    songs,
    moves,
    own,
  }: {
    tempoKnown: boolean
    onBeat: number
    songs: number
    moves: readonly string[]
    own: string | null
  }) => {
    const beat =
      onBeat === songs
        ? 'every song is ridden on its beat'
        : onBeat === 0
          ? 'the songs are ridden off the beat'
          : `${onBeat} of ${songs} songs are ridden on the beat`
    const ground = tempoKnown
      ? `Tempo decides what is climbed, run, or pushed: ${beat}`
      : 'No tempo is known, so variety decides what is climbed, run, or pushed, and every cadence is stated'
    const taught = moves.length === 0 ? '' : `; ${and(moves)} come plain first and build from there`
    return `${ground}${taught}${own === null ? '' : `; the finish ends on a ${own} that no other song has`}.`
  },
  tooLong: ({ seconds }: { seconds: number }) =>
    `The songs run ${duration(seconds)} over class length; take one out, or let some end earlier.`,
  stillOpen: ({ seconds, songs }: { seconds: number; songs: number }) =>
    `${duration(seconds)} still open: add about ${plural(songs, 'song', 'songs')}.`,

  // A song
  song: ({
    song,
    role,
    ridden,
    energy,
    bpm,
    strikes,
    fresh,
    loud,
    story,
  }: {
    song: string
    role: 'warmUp' | 'work' | 'recovery' | 'finish' | 'coolDown'
    ridden: string
    energy: number | null
    bpm: number | null
    strikes: 0.5 | 1 | 2 | null
    fresh: readonly string[]
    loud: readonly number[]
    story: number | null
  }) => {
    const place = role === 'finish' ? ', the finish' : role === 'warmUp' ? ', to warm up' : ''
    const what = `${song}: ${role === 'recovery' && !ridden.startsWith('recovery') ? 'recovery, ' : ''}${ridden}${place}${energy === null ? '' : `, energy ${energy} of 5`}`
    const legs =
      bpm === null
        ? '; cadence stated, as no tempo is known.'
        : strikes === null
          ? `; off the beat, because ${number(bpm, 1)} bpm gives no cadence that suits it.`
          : `, ${measures.rpm((bpm * strikes) / 2)} ${STRIKES[strikes]}.`
    const news = fresh.length === 0 ? '' : ` New here: ${and(fresh)}.`
    const quiet = story === null ? '' : `; quiet longest from ${clock(story)}, with room for a story`
    const sound = loud.length === 0 ? '' : ` It is loud from ${and(loud.map(clock))}, where the work is${quiet}.`
    return `${what}${legs}${news}${sound}`
  },
  /** What a song is ridden as; without a ground what stands out in it is all. */
  ridden: ({ ground, extras }: { ground: keyof typeof GROUNDS | null; extras: readonly string[] }) =>
    [...(ground === null ? [] : [GROUNDS[ground]]), ...(extras.length > 0 ? [and(extras)] : [])].join(' with '),
  extra: ({ kind }: { kind: keyof typeof EXTRAS }) => EXTRAS[kind],
  /** Several of a move, by its plain name. */
  moves: ({ move }: { move: string }): string => (/(?:s|sh|ch|x)$/.test(move) ? `${move}es` : `${move}s`),
  name: ({ name }: { name: keyof typeof NAMES }) => NAMES[name],

  // The change itself
  drafted: ({ songs, draft }: { songs: number; draft: number }) =>
    `Drafted ${songs === 1 ? 'one song' : `${songs} songs`} (draft ${draft})`,

  // On screen
  title: 'draft it for me',
  where: ({ songs, level, minutes }: { songs: number; level: string; minutes: number }) =>
    `a first draft of ${plural(songs, 'song', 'songs')}, ${level}, ${minutes} minutes`,
  noOpenSong: 'no empty song',
  use: 'use this draft',
  another: 'try another',
  aim: 'goal',
  aimName: ({ aim }: { aim: keyof typeof AIMS }) => AIMS[aim],
  draft: 'draft',
  hint: 'Use the number to get this draft again. Songs that have blocks stay as they are.',
  driveHint: 'Where a song’s sound or energy is known, it decides what is a peak and what is work.',
  songBySong: 'song by song',
  everySongFilled: 'Every song has blocks. Add a song, or delete the blocks of one, to have it drafted.',
  working: 'Working it out …',
  clean: 'This draft: nothing to fix.',
  checks: ({ fix, consider, know }: { fix: number; consider: number; know: number }) =>
    `This draft: ${[fix > 0 && `${fix} to fix`, consider > 0 && `${consider} to consider`, know > 0 && `${know} good to know`].filter((part) => part !== false).join(', ')}.`,
}
