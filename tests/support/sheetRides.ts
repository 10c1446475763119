import type { Block, Cue, CueMoment, Ride, Section } from '#plan/model.ts'
import { demoRide } from './demoRides.ts'
import { aBlock, aSection, aSet, aSong, inSeconds, smallRide } from './smallRide.ts'

/** Rides that a printed page has to get right: every one is hard in a way of its own. */

const total = (from: number, to = from): Partial<Block> => ({ resistance: { kind: 'total', from, to } })
const cue = (id: string, moment: CueMoment, counts: number, text: string, count?: 4 | 8): Cue => ({
  id,
  moment,
  lead: { counts },
  text,
  ...(count && { count }),
})

/** Totals from ¼ to 12¾, ranges, open ones and one below base; efforts in halves; count-ins; a welcome. */
export const totalsRide = (): Ride => ({
  ...smallRide(),
  id: 'totals',
  title: 'Totals of every kind',
  slotMinutes: 20,
  startsAt: '06:30',
  briefingSeconds: 120,
  clearUpSeconds: 60,
  leaders: [{ id: 'odalys', name: 'Odalys Thornquill', wordsPerMinute: 140 }],
  sections: [
    aSection('s1', {
      song: aSong('lamp-oil', { title: 'Lamp Oil', artist: 'Tin Orchard' }),
      blocks: [
        aBlock('flat', { ...total(1), cues: [cue('c1', 'announce', 8, 'Find base.'), cue('c2', 'countIn', 0, '', 4)] }),
        aBlock('climb', { ...total(17, 23), terrain: 'hill', effort: { from: 5.5, to: 6.5 } }),
        aBlock('heavy', {
          ...total(51),
          label: 'heavy climb',
          terrain: 'hill',
          posture: 'standing',
          effort: { from: 8, to: 9 },
          cues: [cue('c3', 'preview', 32, 'Next is the heaviest climb of the day.'), cue('c4', 'announce', 8, 'Stand up.', 8)],
        }),
        aBlock('open', { resistance: { kind: 'change', mode: 'atLeast', steps: -24 }, posture: 'hovering' }),
        aBlock('feel', { resistance: { kind: 'byFeel', from: 17, to: 23 } }),
      ],
    }),
    aSection('s2', {
      song: aSong('lamp-oil-2', { title: 'Lamp Oil II' }),
      blocks: [
        aSet('waves', [
          aBlock('push', { length: { counts: 32 }, ...total(12), effort: { from: 8, to: 8 } }),
          aBlock('ease', { length: { counts: 32 }, ...total(4), effort: { from: 3, to: 3 } }),
        ]),
        aBlock('off', { resistance: { kind: 'allOff' } }),
      ],
    }),
  ],
})

/** One block of time and nothing else. */
export const oneBlockRide = (): Ride => ({
  ...smallRide(),
  id: 'one-block',
  title: 'One block',
  sections: [aSection('s', { blocks: [aBlock('climb', { ...inSeconds(200), terrain: 'hill', posture: 'standing', ...total(6) })] })],
})

/** The longer demo ride twice over, with a welcome: an hour and a half, and no time of day. */
export function longRide(): Ride {
  const ridge = demoRide('ridge')
  const { startsAt: _none, ...rest } = ridge
  return {
    ...rest,
    id: 'long',
    title: 'Ninety',
    slotMinutes: 95,
    briefingSeconds: 180,
    clearUpSeconds: 120,
    sections: [...ridge.sections, ...ridge.sections.map(again)],
  }
}

/** The same section with ids of its own. */
const again = (section: Section): Section => {
  const { song, blocks } = section
  return {
    ...section,
    id: `${section.id}x`,
    song: song && { ...song, id: `${song.id}x` },
    blocks: blocks.map((item) =>
      'parts' in item ? item : { ...item, id: `${item.id}x`, cues: item.cues.map((one) => ({ ...one, id: `${one.id}x` })) },
    ),
  }
}

/** Titles, names and words in scripts that run the other way, with numbers in them. */
export function rightToLeftRide(): Ride {
  const spark = demoRide('spark')
  return {
    ...spark,
    id: 'rtl',
    title: 'ركوب المساء 45 (2)',
    aim: 'טיפוס ארוך, 3 דחיפות',
    leaders: spark.leaders.map((leader, index) => ({ ...leader, name: index === 0 ? 'ليلى حداد' : 'נועה לוי' })),
    sections: spark.sections.map((section, index) => ({
      ...section,
      song: section.song && {
        ...section.song,
        title: index % 2 ? 'שיר הגלים 7' : 'أغنية الموج 7',
        artist: index % 2 ? 'תזמורת פח' : 'فرقة الريح',
      },
    })),
  }
}
