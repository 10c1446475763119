import { describe, expect, test } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import type { Row } from '#features/sheet/contents/contents.ts'
import { sheetContents } from '#features/sheet/contents/sheetContents.ts'
import { DEFAULT_LEADER } from '#plan/defaults.ts'
import type { Block, Ride } from '#plan/model.ts'
import { demoRide } from '#tests/support/demoRides.ts'

const contentsOf = (ride: Ride, songClock: 'left' | 'elapsed' = 'left') =>
  sheetContents(ride, computeRide(ride), { date: '25 November 2026', songClock })
const spark = demoRide('spark')
const ridge = demoRide('ridge')

/** The first demo ride with one of its blocks changed. */
const withBlock = (section: number, block: number, change: Partial<Block>): Ride => ({
  ...spark,
  sections: spark.sections.map((one, s) =>
    s === section ? { ...one, blocks: one.blocks.map((item, b) => (b === block ? ({ ...item, ...change } as Block) : item)) } : one,
  ),
})
const rowOf = (ride: Ride, section: number, block: number): Row => contentsOf(ride).bands[section]!.rows[block]!

describe('what a sheet says', () => {
  test('its head sums up the class', () => {
    const { title, aim, facts, stamp } = contentsOf(spark)
    expect(title).toBe('Twenty-Minute Spark')
    expect(aim).toBe(spark.aim)
    expect(facts).toEqual(['advanced', '20 min from 12:10 PM', '19:36 long, 0:24 left', 'Lanternfish, main room'])
    expect(stamp).toMatch(/^25 November 2026, version [0-9a-f]{4}$/)
  })

  test('the stamp tells two versions apart, and is the same on a kept copy', () => {
    expect(contentsOf({ ...spark, title: 'Spark' }).stamp).not.toBe(contentsOf(spark).stamp)
    const copy = { ...spark, id: 'copy', parent: { rideId: spark.id, revision: 'r' } }
    expect(contentsOf(copy).stamp).toBe(contentsOf(spark).stamp)
  })

  test('a ride that runs over says so', () => {
    expect(contentsOf({ ...spark, slotMinutes: 19 }).facts).toContain('19:36 long, 0:36 over class time')
  })

  test('one band a song, with what the leader checks before it', () => {
    const { bands } = contentsOf(spark)
    expect(bands).toHaveLength(6)
    expect(bands[2]).toMatchObject({
      number: 3,
      song: 'Tin Orchard Run',
      artist: 'Hazel Parallax',
      lead: 'left',
      facts: ['6:07 for 3:51', '158 bpm, 79 rpm on the beat', 'in 1¼, out ½'],
    })
  })

  test('one row a change: both clocks, eights, body, call and total, effort, words', () => {
    expect(rowOf(spark, 2, 1)).toMatchObject({
      rideClock: '6:19',
      songClock: '3:39',
      length: '8',
      posture: 'standing',
      hands: 'wide',
      total: '1½',
      call: '+¾',
      level: '7',
      name: 'standing run',
      words: 'Three quarters on, up light, twenty-four seconds.',
      shortWords: 'Up light, twenty-four seconds.',
    })
    expect(contentsOf(spark, 'elapsed').bands[2]!.rows[1]!.songClock).toBe('0:12')
  })

  test('a band for each section and a row for each played block', () => {
    const { bands } = contentsOf(ridge)
    expect(bands).toHaveLength(13)
    expect(bands.flatMap((band) => band.rows)).toHaveLength(computeRide(ridge).blocks.length)
  })

  test('the foot stands in a row only where it has to be said', () => {
    const feet = contentsOf(spark).bands[2]!.rows.map((row) => row.foot)
    expect(feet).toEqual([undefined, undefined, undefined, undefined, undefined, undefined, 'right', undefined, undefined, undefined])
  })

  test('a move is named where the block’s name does not say it', () => {
    expect(rowOf(spark, 1, 4).notes).toEqual(['travel-back on 4'])
    expect(rowOf(spark, 2, 2).notes).toEqual([])
  })

  test('an option that the cue offers already is not printed twice', () => {
    expect(rowOf(spark, 2, 5)).toMatchObject({ words: 'Fours now. Option: keep the eights.', easier: undefined })
    expect(rowOf(spark, 1, 2).easier).toBe('stay seated')
  })

  test('a block without cues gets its call in words, said once where space is short', () => {
    expect(rowOf(withBlock(2, 1, { cues: [] }), 2, 1)).toMatchObject({ words: 'Three quarters on.', shortWords: '', call: '+¾' })
  })

  test('a call too long for its column stands before the words', () => {
    const row = rowOf(withBlock(2, 1, { resistance: { kind: 'change', mode: 'ifYouHaveIt', steps: 3 } }), 2, 1)
    expect(row.call).toBe('')
    expect(row.words).toBe('+¾ if you have it. Three quarters on, up light, twenty-four seconds.')
  })

  test('words do not begin with the block’s name, which stands before them', () => {
    const cue = { id: 'c', moment: 'announce' as const, lead: { counts: 16 }, text: 'Standing run. Three quarters on. Up light.' }
    expect(rowOf(withBlock(2, 1, { cues: [cue] }), 2, 1)).toMatchObject({ words: 'Three quarters on. Up light.', shortWords: 'Up light.' })
    const short = withBlock(2, 1, { cues: [{ ...cue, text: 'Three quarters on. Standing run.' }] })
    expect(rowOf(short, 2, 1)).toMatchObject({ words: 'Three quarters on. Standing run.', shortWords: '' })
  })

  test('cues are printed in the order they are said', () => {
    const cue = (id: string, counts: number, text: string) => ({ id, moment: 'announce' as const, lead: { counts }, text })
    expect(rowOf(withBlock(0, 1, { cues: [cue('a', 4, 'Second.'), cue('b', 32, 'First.')] }), 0, 1).words).toBe('First. Second.')
  })

  test('a checkpoint, a cadence of its own, water and another leader are noted', () => {
    const row = rowOf(
      withBlock(3, 1, {
        resistance: { kind: 'change', mode: 'exact', steps: 5, checkpoint: { from: 6, to: 8 } },
        strikesPerBeat: null,
        cadence: { rpm: 100, rampTo: 110 },
        allOut: true,
        water: true,
        leader: 'odalys',
      }),
      3,
      1,
    )
    expect(row.notes).toEqual(['100 to 110 rpm', 'all out', 'be at 1½–2'])
    expect(row.handOver).toBe('over to OT')
    expect(row.water).toBe(true)
  })

  test('rounds of a set are counted at their first part', () => {
    const [first, second] = spark.sections[3]!.blocks as [Block, Block]
    const ride: Ride = { ...spark, sections: [{ ...spark.sections[3]!, blocks: [{ id: 'set', rounds: 3, parts: [first, second] }] }] }
    expect(contentsOf(ride).bands[0]!.rows.map((row) => row.notes)).toEqual([
      ['round 1 of 3'],
      [],
      ['round 2 of 3'],
      [],
      ['round 3 of 3'],
      [],
    ])
  })

  test('a section without a song keeps the clock', () => {
    const block = { ...(spark.sections[0]!.blocks[0] as Block), length: { seconds: 90 }, cadence: { rpm: 85 } }
    const { bands, heads } = contentsOf({ ...spark, sections: [{ id: 's', leadInSeconds: 0, blocks: [block] }] })
    expect(bands[0]).toMatchObject({ title: undefined, song: undefined, facts: ['0:00 for 1:30', '85 rpm', expect.stringMatching(/^in /)] })
    expect(bands[0]!.rows[0]!.length).toBe('1:30')
    expect(heads.length).toBe('for')
  })

  test('the legend explains the marks that are used, and no others', () => {
    const texts = contentsOf(spark).legend.map((entry) => entry.text)
    expect(texts).toEqual(
      expect.arrayContaining(['seated', 'standing', 'center', 'wide', 'ends', 'eights', 'turns over base, then the change', 'water']),
    )
    expect(texts).not.toContain('hovering')
    expect(texts).toContain('Remy Castellane-Voss')
    const alone = { ...spark, leaders: spark.leaders.slice(0, 1), sections: spark.sections.slice(0, 3) }
    expect(contentsOf(alone).legend.map((entry) => entry.text)).not.toContain('Odalys Thornquill')
  })
})

describe('around the songs', () => {
  test('the welcome stands before the first song and the wipe-down after the last, on the class’s own clock', () => {
    const { bands } = contentsOf({ ...spark, briefingSeconds: 180, clearUpSeconds: 90 })
    expect(bands[0]!.before).toEqual({ rideClock: '0:00', words: 'welcome and bike setup, 3:00' })
    expect(bands.at(-1)!.after).toEqual({ rideClock: '22:36', words: 'wipe-down, 1:30' })
    expect(bands.slice(1).filter(({ before }) => before)).toEqual([])
    expect(contentsOf(spark).bands.filter(({ before, after }) => before || after)).toEqual([])
  })

  test('those who lead are named, once they have a name', () => {
    expect(contentsOf(spark).leaders).toBe('Odalys Thornquill and Remy Castellane-Voss')
    expect(contentsOf({ ...spark, leaders: [DEFAULT_LEADER] }).leaders).toBeUndefined()
  })
})

describe('how numbers and words are written', () => {
  test('halves of an effort and of a total alike', () => {
    const row = rowOf(withBlock(0, 1, { effort: { from: 5.5, to: 6.5 }, resistance: { kind: 'total', from: 6, to: 10 } }), 0, 1)
    expect(row).toMatchObject({ level: '5½–6½', total: '1½–2½' })
  })

  test('a count-in follows the words it counts in, unless they count themselves', () => {
    const cue = (id: string, counts: number, text: string, count?: 4 | 8) => ({
      id,
      moment: 'announce' as const,
      lead: { counts },
      text,
      count,
    })
    const words = (...cues: Block['cues']) => rowOf(withBlock(0, 1, { cues }), 0, 1).words
    expect(words(cue('a', 8, 'Up we go', 4))).toBe('Up we go. Count in 4.')
    expect(words(cue('a', 16, 'Up we go.', 8), cue('b', 4, 'Light hands.'))).toBe('Up we go. Count in 8. Light hands.')
    expect(words(cue('a', 0, '', 4))).toBe('Count in 4.')
    expect(words(cue('a', 8, 'Up in four, three, two, one.', 4))).toBe('Up in four, three, two, one.')
  })

  test('right-to-left names keep to themselves among our words', () => {
    const leaders = spark.leaders.map((leader, index) => ({ ...leader, name: index === 0 ? 'ליה דור' : 'زين' }))
    const { bands, leaders: named, legend } = contentsOf({ ...spark, leaders })
    expect(named).toBe('\u2068ליה דור\u2069 and \u2068زين\u2069')
    expect(bands[3]!.handOver).toBe('over to \u2068ز\u2069')
    expect(legend.map(({ text }) => text)).toContain('زين')
  })
})
