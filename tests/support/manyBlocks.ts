import { DEFAULT_BIKE, DEFAULT_LEADER } from '#plan/defaults.ts'
import { type Block, CURRENT_SCHEMA, POSTURES, type Ride, type Section, TERRAINS } from '#plan/model.ts'
import { sayChange } from '#tests/support/sayChange.ts'

const BPM = 128
const BLOCKS_A_SONG = 8
/** Lengths in counts, so that neighbours differ in width. */
const LENGTHS = [32, 16, 64, 24, 48, 8, 40, 32]
const EFFORTS = [3, 5, 7, 4, 8, 2, 6, 9]

/**
 * A ride of so many blocks, eight a song, of different lengths, efforts and calls. The same number gives the same ride.
 * Past about 180 blocks it is longer than any class; it is there to measure with.
 */
export function manyBlocks(count: number): Ride {
  const sections: Section[] = []
  for (let first = 0; first < count; first += BLOCKS_A_SONG) sections.push(song(first, Math.min(first + BLOCKS_A_SONG, count)))
  return {
    schema: CURRENT_SCHEMA,
    id: `many-${count}`,
    title: `${count} blocks`,
    level: 'mixed',
    slotMinutes: 60,
    briefingSeconds: 30,
    clearUpSeconds: 60,
    datum: 'base',
    bike: DEFAULT_BIKE,
    leaders: [DEFAULT_LEADER],
    sections,
  }
}

function song(first: number, end: number): Section {
  const blocks = Array.from({ length: end - first }, (_, place) => block(first + place))
  const counts = LENGTHS.reduce((sum, length) => sum + length, 0)
  return {
    id: `song-${first}`,
    leadInSeconds: 2,
    lead: 'right',
    song: {
      id: `track-${first}`,
      title: `Track ${1 + first / BLOCKS_A_SONG}`,
      grid: {
        anchors: [
          [0, 0.25],
          [counts, 0.25 + (counts * 60) / BPM],
        ],
        beatsPerBar: 4,
      },
      lengthSeconds: 1 + (counts * 60) / BPM,
      strikesPerBeat: 1,
    },
    blocks,
  }
}

function block(index: number): Block {
  const effort = EFFORTS[index % EFFORTS.length]!
  return {
    id: `block-${index}`,
    label: `block ${index + 1}`,
    terrain: TERRAINS[index % TERRAINS.length]!,
    length: { counts: LENGTHS[index % LENGTHS.length]! },
    posture: POSTURES[index % 2]!,
    hands: 'wide',
    resistance: resistanceOf(index),
    effort: { from: effort, to: index % 4 === 0 ? Math.min(10, effort + 1) : effort },
    cues: [
      {
        id: `cue-${index}`,
        moment: 'announce',
        lead: { counts: 8 },
        text: `${sayChange(totalOf(index) - totalOf(index - 1), DEFAULT_BIKE)}, light hands.`,
      },
    ],
  }
}

/** Steps over base that weigh about what is planned at this tempo, so that the ride is one a class could be. */
const TOTALS: Record<number, number> = { 2: 1, 3: 3, 4: 5, 5: 7, 6: 9, 7: 10, 8: 11, 9: 13 }

const totalOf = (index: number): number => (index < 0 ? 0 : TOTALS[EFFORTS[index % EFFORTS.length]!]!)

/** A total at every third block, the change it takes at the others. */
function resistanceOf(index: number): Block['resistance'] {
  const total = totalOf(index)
  if (index % 3 === 0) return { kind: 'total', from: total, to: total }
  return { kind: 'change', mode: 'exact', steps: total - totalOf(index - 1) }
}
