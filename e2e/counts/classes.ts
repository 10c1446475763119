import type { PatternId } from '#plan/patterns/blockPattern.ts'

/** A block of a class that is to be entered: what it is, and what the tray’s block of that kind would have otherwise. */
export interface WantedBlock {
  pattern: PatternId
  eights?: number
  effort?: number
  /** Turns over base. */
  to?: string
  /** Said besides what the block brings along. */
  says?: string
}

export interface WantedSong {
  title: string
  bpm: number
  length: string
  blocks: readonly WantedBlock[]
}

export interface WantedClass {
  title: string
  minutes: 30 | 45
  songs: readonly WantedSong[]
}

/** 50 blocks and 76 cues in 45 minutes: hills, jumps, runs, and pushes. Invented; kinds, lengths, and efforts as a mixed class has them (common practice, no source). */
export const HILLS_AND_JUMPS: WantedClass = {
  title: 'Harbor Hills',
  minutes: 45,
  songs: [
    {
      title: 'Postcards from Level Sea',
      bpm: 166,
      length: '3:08',
      blocks: [
        { pattern: 'flat', eights: 16, effort: 2, to: '0', says: 'Find your seat, soft hands.' },
        { pattern: 'flat', eights: 16, effort: 3, to: '1/4' },
        { pattern: 'flat', eights: 16, says: 'Legs are awake now.' },
        { pattern: 'flat', eights: 16, effort: 5, says: 'Breathe through the nose.' },
      ],
    },
    {
      title: 'Marmalade Signal',
      bpm: 152,
      length: '3:12',
      blocks: [
        { pattern: 'flat', says: 'Same gear, quicker feet.' },
        { pattern: 'seated-hill', eights: 12 },
        { pattern: 'standing-flat', eights: 8, says: 'Light on the bars.' },
        { pattern: 'jumps-8', eights: 16 },
        { pattern: 'recover' },
      ],
    },
    {
      title: 'Hedge Maze Radio',
      bpm: 140,
      length: '3:40',
      blocks: [
        { pattern: 'seated-hill', eights: 16, says: 'Hips back, push through the heel.' },
        { pattern: 'standing-hill' },
        { pattern: 'seated-hill', says: 'Sit, and keep what you have.' },
        { pattern: 'standing-hill', eights: 16, effort: 8, to: '3', says: 'This is the steep part.' },
        { pattern: 'recover' },
      ],
    },
    {
      title: 'Glass Tram',
      bpm: 176,
      length: '3:17',
      blocks: [
        { pattern: 'flat', eights: 12 },
        { pattern: 'run', eights: 16, says: 'Weight over your feet.' },
        { pattern: 'flat', eights: 12 },
        { pattern: 'run', eights: 16, effort: 8, says: 'Half of this song is behind you.' },
        { pattern: 'recover', eights: 16 },
      ],
    },
    {
      title: 'Iron Lullaby',
      bpm: 126,
      length: '3:50',
      blocks: [
        { pattern: 'seated-hill', eights: 16, says: 'One long climb, all the way to the top.' },
        { pattern: 'seated-hill', eights: 16, effort: 7, to: '2 1/2' },
        { pattern: 'standing-hill', eights: 16, effort: 8, to: '3', says: 'Rise on one.' },
        { pattern: 'recover', says: 'Drink.' },
      ],
    },
    {
      title: 'Chalk Cathedral',
      bpm: 130,
      length: '3:57',
      blocks: [
        { pattern: 'jumps-16', says: 'Slow ones to begin with.' },
        { pattern: 'jumps-8', eights: 16 },
        { pattern: 'jumps-4', eights: 8, says: 'Smooth, no bouncing.' },
        { pattern: 'recover' },
        { pattern: 'hold', eights: 20, says: 'Stay right here.' },
      ],
    },
    {
      title: 'Thimble Ocean',
      bpm: 84,
      length: '2:41',
      blocks: [{ pattern: 'recover', eights: 28, effort: 2, says: 'Towel, water, shake your hands.' }],
    },
    {
      title: 'Bright Cellar',
      bpm: 156,
      length: '3:30',
      blocks: [
        { pattern: 'tempo', says: 'The pace you could hold for an hour.' },
        { pattern: 'surge' },
        { pattern: 'tempo', says: 'Back to the pace, not below it.' },
        { pattern: 'surge', effort: 9 },
        { pattern: 'recover', eights: 20 },
      ],
    },
    {
      title: 'Kite Factory',
      bpm: 176,
      length: '3:50',
      blocks: [
        { pattern: 'flat', says: 'Three pushes in this song.' },
        { pattern: 'push' },
        { pattern: 'recover', says: 'Easy legs.' },
        { pattern: 'push' },
        { pattern: 'recover' },
        { pattern: 'push', effort: 10, says: 'Last one, leave it here.' },
        { pattern: 'recover', eights: 28 },
      ],
    },
    {
      title: 'Nickel Monsoon',
      bpm: 132,
      length: '4:08',
      blocks: [
        { pattern: 'seated-hill', eights: 16 },
        { pattern: 'leans', eights: 16, says: 'Left, then right, from the hips.' },
        { pattern: 'seated-hill', effort: 7 },
        { pattern: 'standing-hill', eights: 16, effort: 8, says: 'Chest up, eyes on the front row.' },
        { pattern: 'recover' },
      ],
    },
    {
      title: 'Last Bus to Vermilion',
      bpm: 172,
      length: '3:21',
      blocks: [
        { pattern: 'run', eights: 24, says: 'Everything you have left.' },
        { pattern: 'flat', eights: 24 },
        { pattern: 'push', effort: 10 },
      ],
    },
    { title: 'Soft Arithmetic', bpm: 80, length: '3:12', blocks: [{ pattern: 'flush', eights: 32, says: 'Thank your legs.' }] },
  ],
}

/** 38 blocks and a cue for each in 45 minutes: flats, climbs, and recoveries. */
export const FLATS_AND_CLIMBS: WantedClass = {
  title: 'Level Evening',
  minutes: 45,
  songs: [
    {
      title: 'Window Seat',
      bpm: 160,
      length: '3:36',
      blocks: [
        { pattern: 'flat', eights: 16, effort: 2, to: '0' },
        { pattern: 'flat', eights: 24, effort: 3, to: '1/4' },
        { pattern: 'flat', eights: 32 },
      ],
    },
    {
      title: 'Copper Weather',
      bpm: 140,
      length: '4:07',
      blocks: [
        { pattern: 'seated-hill', eights: 24 },
        { pattern: 'flat', eights: 16 },
        { pattern: 'seated-hill', eights: 20 },
        { pattern: 'recover' },
      ],
    },
    {
      title: 'Night Ferry Blue',
      bpm: 132,
      length: '4:22',
      blocks: [
        { pattern: 'seated-hill', eights: 16 },
        { pattern: 'standing-hill' },
        { pattern: 'seated-hill', eights: 16, effort: 7 },
        { pattern: 'standing-hill', eights: 20 },
        { pattern: 'recover' },
      ],
    },
    {
      title: 'Paper Crane Hour',
      bpm: 172,
      length: '3:45',
      blocks: [
        { pattern: 'flat', eights: 24 },
        { pattern: 'run', eights: 16 },
        { pattern: 'flat', eights: 24 },
        { pattern: 'recover', eights: 16 },
      ],
    },
    { title: 'Salt and Static', bpm: 88, length: '3:40', blocks: [{ pattern: 'recover', eights: 40, effort: 2 }] },
    {
      title: 'Hollow Lantern',
      bpm: 128,
      length: '4:30',
      blocks: [
        { pattern: 'seated-hill', eights: 20 },
        { pattern: 'hold' },
        { pattern: 'standing-hill', eights: 16 },
        { pattern: 'recover' },
        { pattern: 'seated-hill', eights: 16, effort: 7 },
      ],
    },
    {
      title: 'Orchard Engine',
      bpm: 150,
      length: '4:16',
      blocks: [
        { pattern: 'tempo' },
        { pattern: 'recover' },
        { pattern: 'tempo', eights: 24 },
        { pattern: 'recover' },
        { pattern: 'tempo' },
      ],
    },
    {
      title: 'Half a Mile of Rain',
      bpm: 136,
      length: '4:16',
      blocks: [
        { pattern: 'seated-hill', eights: 16 },
        { pattern: 'jumps-16', eights: 16 },
        { pattern: 'seated-hill', eights: 16 },
        { pattern: 'standing-hill', eights: 12 },
        { pattern: 'recover' },
      ],
    },
    {
      title: 'Tin Moon Parade',
      bpm: 168,
      length: '3:39',
      blocks: [
        { pattern: 'flat', eights: 24 },
        { pattern: 'push' },
        { pattern: 'recover', eights: 16 },
        { pattern: 'push' },
        { pattern: 'recover', eights: 20 },
      ],
    },
    { title: 'Slow Glass', bpm: 76, length: '3:24', blocks: [{ pattern: 'flush', eights: 32 }] },
  ],
}

/** A class of songs that both have been planned with before. */
export const FROM_BOTH: WantedClass = {
  title: 'Kept and Mixed',
  minutes: 45,
  songs: [
    ...FLATS_AND_CLIMBS.songs.slice(0, 2),
    ...HILLS_AND_JUMPS.songs.slice(2, 6),
    ...FLATS_AND_CLIMBS.songs.slice(4, 7),
    ...HILLS_AND_JUMPS.songs.slice(8),
  ],
}
