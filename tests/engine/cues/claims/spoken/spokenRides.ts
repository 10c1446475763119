import type { Block, Resistance, Ride, Section } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { aBlock, aSection, aSet, aSong } from '#tests/support/smallRide.ts'

const change = (steps: number): { resistance: Resistance } => ({ resistance: { kind: 'change', mode: 'exact', steps } })
const total = (from: number, to = from): { resistance: Resistance } => ({ resistance: { kind: 'total', from, to } })
const effort = (from: number, to = from) => ({ effort: { from, to } })
const seated = (id: string, label: string, more: Partial<Block>): Block => aBlock(id, { label, ...more })
const standing = (id: string, label: string, more: Partial<Block>): Block =>
  aBlock(id, { label, posture: 'standing', hands: 'wide', ...more })

/** A song that ends with its blocks. */
function song(id: string, bpm: number, blocks: Section['blocks']): Section {
  const countsOf = (item: Section['blocks'][number]): number =>
    'parts' in item ? item.rounds * item.parts.reduce((sum, part) => sum + countsOf(part), 0) : (item.length as { counts: number }).counts
  const outCount = blocks.reduce((sum, item) => sum + countsOf(item), 0)
  return aSection(id, { song: aSong(`${id}-song`, { grid: gridOfTempo(bpm), lengthSeconds: 400 }), outCount, blocks })
}

/**
 * Twenty-five minutes from half past six on a knob of quarter turns over base: without music, at 120 beats a minute
 * (half a second a count, 60 rpm), at 160 (an eight is three seconds, 80 rpm) and at 150, where jumps come in rounds.
 * Lengths and totals stand beside the blocks, so that what is right of a sentence can be worked out by hand.
 */
export function eveningRide(): Ride {
  return {
    ...blankRide({ newId: () => 'evening', title: 'evening' }),
    slotMinutes: 25,
    startsAt: '18:30',
    sections: [
      aSection('warm', {
        blocks: [
          // 0:00 two minutes, a quarter turn
          seated('settle', 'settle', { length: { seconds: 120 }, cadence: { rpm: 80 }, ...total(1), ...effort(2) }),
          // 2:00 ninety seconds, ¾
          seated('build', 'build', { terrain: 'tempo', length: { seconds: 90 }, cadence: { rpm: 90 }, ...change(2), ...effort(4) }),
          // 3:30 a minute, ½
          seated('ease', 'ease', { terrain: 'recover', length: { seconds: 60 }, cadence: { rpm: 80 }, ...change(-1), ...effort(3) }),
        ],
      }),
      song('climbs', 120, [
        // 4:30 64 s, 1½
        seated('climb', 'seated climb', { terrain: 'hill', length: { counts: 128 }, ...change(4), ...effort(6) }),
        // 5:34 32 s, 2
        standing('rise', 'standing climb', { terrain: 'hill', length: { counts: 64 }, ...change(2), ...effort(7) }),
        // 6:06 48 s, ¾
        seated('breathe', 'recover', { terrain: 'recover', length: { counts: 96 }, ...change(-5), ...effort(3) }),
        // 6:54 two minutes, 2
        seated('long', 'long hill', { terrain: 'hill', length: { counts: 240 }, ...total(8), ...effort(7) }),
        // 8:54 36 s, 1
        seated('down', 'recover', { terrain: 'recover', length: { counts: 72 }, ...change(-4), ...effort(3) }),
      ]),
      song('pushes', 160, [
        // 9:30 24 s, 1
        seated('ready', 'set-up', { terrain: 'tempo', length: { counts: 64 }, ...effort(5) }),
        // 9:54 30 s, 1¾
        seated('push1', 'push 1', { terrain: 'push', length: { counts: 80 }, ...change(3), ...effort(8) }),
        // 10:24 a minute, 1
        seated('rest1', 'recover', { terrain: 'recover', length: { counts: 160 }, ...change(-3), ...effort(3) }),
        // 11:24 30 s, 2
        seated('push2', 'push 2', { terrain: 'push', length: { counts: 80 }, ...change(4), ...effort(8) }),
        // 11:54 a minute, 1
        seated('rest2', 'recover', { terrain: 'recover', length: { counts: 160 }, ...change(-4), ...effort(3) }),
        // 12:54 45 s, 2¼
        seated('push3', 'push 3', { terrain: 'push', length: { counts: 120 }, ...change(5), ...effort(9) }),
        // 13:39 75 s, 1
        seated('rest3', 'recover', { terrain: 'recover', length: { counts: 200 }, ...change(-5), ...effort(2) }),
      ]),
      song('hops', 150, [
        // 14:54 25.6 s, 1½
        seated('gather', 'set-up', { terrain: 'tempo', length: { counts: 64 }, ...change(2), ...effort(5) }),
        // 15:19.6 three rounds of 25.6 s and 12.8 s
        aSet('hopset', [
          standing('hop', 'jumps on 8', { terrain: 'jumps', move: { name: 'jump', counts: 8 }, ...effort(7) }),
          seated('sit', 'seated hold', { terrain: 'hold', length: { counts: 32 }, ...effort(5) }),
        ]),
        // 17:14.8 25.6 s
        standing('lean', 'side leans', { terrain: 'run', move: { name: 'lean', counts: 4 }, ...effort(6) }),
        // 17:40.4 38.4 s, 1
        seated('shake', 'recover', { terrain: 'recover', length: { counts: 96 }, ...change(-2), ...effort(3) }),
      ]),
      song('summit', 120, [
        // 18:18.8 eighty seconds, 3 to 4
        seated('heavy', 'heavy hill', { terrain: 'hill', length: { counts: 160 }, ...total(12, 16), ...effort(8) }),
        // 19:38.8 32 s
        seated('keep', 'hold', { terrain: 'hold', ...effort(7) }),
        // 20:10.8 24 s
        seated('roll', 'over the top', { terrain: 'recover', length: { counts: 48 }, resistance: { kind: 'allOff' }, ...effort(1) }),
      ]),
      aSection('home', {
        blocks: [
          // 20:34.8 two minutes, a quarter turn
          seated('flush', 'flush', { terrain: 'flush', length: { seconds: 120 }, cadence: { rpm: 75 }, ...total(1), ...effort(2) }),
          // 22:34.8 to 24:54.8
          seated('stretch', 'stretch', { terrain: 'stretch', length: { seconds: 140 }, cadence: 'legsStill', ...effort(1) }),
        ],
      }),
    ],
  }
}

/** Eight and a half minutes on a bike of a hundred levels, counted from the loose wheel, at 128 beats a minute. */
export function levelRide(): Ride {
  const ride = eveningRide()
  return {
    ...ride,
    id: 'levels',
    slotMinutes: 10,
    datum: 'loose',
    bike: {
      ...ride.bike,
      unit: 'level',
      stepsPerUnit: 1,
      max: 100,
      base: 20,
      points: [
        [0, 5],
        [20, 25],
        [60, 180],
        [100, 340],
      ],
    },
    sections: [
      song('levels', 128, [
        // 0:00 a minute at 30
        seated('flat', 'flat', { length: { counts: 128 }, ...total(30), ...effort(4) }),
        // 1:00 a minute at 45
        seated('up1', 'climb 1', { terrain: 'hill', length: { counts: 128 }, ...change(15), ...effort(7) }),
        // 2:00 45 s at 32
        seated('off1', 'recover', { terrain: 'recover', length: { counts: 96 }, ...change(-13), ...effort(3) }),
        // 2:45 30 s at 50
        standing('up2', 'climb 2', { terrain: 'hill', ...total(50), ...effort(8) }),
        // 3:15 30 s at 35
        seated('off2', 'recover', { terrain: 'recover', ...change(-15), ...effort(3) }),
        // 3:45 a minute at 45 or more
        seated('up3', 'climb 3', {
          terrain: 'hill',
          length: { counts: 128 },
          resistance: { kind: 'change', mode: 'atLeast', steps: 10 },
          ...effort(8),
        }),
        // 4:45 a minute at 22 to 26
        seated('last', 'flush', { terrain: 'flush', length: { counts: 128 }, ...total(22, 26), ...effort(2) }),
      ]),
    ],
  }
}
