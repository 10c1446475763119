import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseRide } from '#plan/document/parseRide.ts'
import { LIMITS } from '#plan/document/schema.ts'
import type { Ride } from '#plan/model.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

// biome-ignore lint/suspicious/noExplicitAny: the tests break the document in ways its type forbids.
type Loose = any
const demo = (): Loose => JSON.parse(readFileSync('public/demo/ridge-and-return.ride.json', 'utf8'))

function broken(breakIt: (ride: Loose) => void) {
  const ride = demo()
  breakIt(ride)
  const parsed = parseRide(ride)
  return parsed.ok ? [] : parsed.problems
}
const sentences = (breakIt: (ride: Loose) => void) => broken(breakIt).map(({ text }) => told(text))

describe('a ride that is one', () => {
  it.each(['twenty-minute-spark', 'ridge-and-return'])('is read as it is written: %s', (name) => {
    const ride = JSON.parse(readFileSync(`public/demo/${name}.ride.json`, 'utf8'))
    expect(parseRide(ride)).toStrictEqual({ ok: true, ride })
  })

  it('is read as it is, however random', () => {
    fc.assert(
      fc.property(arbitraryRide(), (ride) => {
        expect(parseRide(ride)).toStrictEqual({ ok: true, ride })
      }),
      { numRuns: 150 },
    )
  })

  it('shares nothing with what it was read from', () => {
    const input = demo()
    const parsed = parseRide(input)
    input.sections[0].blocks[0].effort.from = 9
    expect(parsed.ok && parsed.ride.sections[0]!.blocks[0]).toMatchObject({ effort: { from: 2 } })
  })

  it('loses keys nobody knows, at every depth', () => {
    const ride = demo()
    ride.colour = 'red'
    ride.sections[0].blocks[0].effort.unit = 'x'
    ride.sections[0].song.grid.anchors.comment = 'lost with the list'
    expect(parseRide(ride)).toStrictEqual({ ok: true, ride: demo() })
  })

  it('is read without undefined properties, with 0 for −0 and a mark for half a character', () => {
    const ride = demo()
    ride.aim = undefined
    ride.briefingSeconds = -0
    ride.title = 'up \ud83d and away'
    const parsed = parseRide(ride)
    expect(parsed.ok && 'aim' in parsed.ride).toBe(false)
    expect(parsed.ok && Object.is(parsed.ride.briefingSeconds, 0)).toBe(true)
    expect(parsed.ok && parsed.ride.title).toBe('up \ufffd and away')
  })
})

describe('what is wrong is said in words, with the place', () => {
  const CASES: [string, (ride: Loose) => void, string, string][] = [
    [
      'effort',
      (r) => (r.sections[2].blocks[1].effort.from = 14),
      'sections[2].blocks[1].effort.from',
      'Song 3, block 2: the effort must be between 0 and 10; it is 14.',
    ],
    [
      'a missing value',
      (r) => delete r.sections[0].blocks[1].hands,
      'sections[0].blocks[1].hands',
      'Song 1, block 2: the hand position is missing.',
    ],
    ['a wrong kind', (r) => (r.slotMinutes = 'long'), 'slotMinutes', 'The class length must be a number; it is “long”.'],
    ['NaN', (r) => (r.slotMinutes = Number.NaN), 'slotMinutes', 'The class length must be a number; it is not a number.'],
    [
      'no end',
      (r) => (r.slotMinutes = Number.POSITIVE_INFINITY),
      'slotMinutes',
      'The class length must be between 1 and 360 minutes; it is endless.',
    ],
    ['an unknown language', (r) => (r.language = 'fr'), 'language', 'The language of the cues must be en or de; it is “fr”.'],
    ['an unknown choice', (r) => (r.level = 'elite'), 'level', 'The level must be beginner, mixed, or advanced; it is “elite”.'],
    ['no list', (r) => (r.sections = {}), 'sections', 'The list of songs must be a list.'],
    [
      'a part of a set',
      (r) => (r.sections[0].blocks[1] = { id: 'x', rounds: 2, parts: [{ ...r.sections[0].blocks[1], posture: 'lying' }] }),
      'sections[0].blocks[1].parts[0].posture',
      'Song 1, set 2, part 1: the posture must be seated, standing, hovering, or offBike; it is “lying”.',
    ],
    [
      'counts and seconds',
      (r) => (r.sections[0].blocks[0].length = { counts: 8, seconds: 3 }),
      'sections[0].blocks[0].length',
      'Song 1, block 1: the length must be in counts or in seconds, not both.',
    ],
    [
      'half a step',
      (r) => (r.sections[0].blocks[0].resistance.from = 1.5),
      'sections[0].blocks[0].resistance.from',
      'Song 1, block 1: the resistance must be a whole number; it is 1.5.',
    ],
    [
      'a cue',
      (r) => (r.sections[0].blocks[0].cues[0].moment = 'now'),
      'sections[0].blocks[0].cues[0].moment',
      'Song 1, block 1, cue 1: the moment must be preview, announce, countIn, action, form, or story; it is “now”.',
    ],
    [
      'a song',
      (r) => (r.sections[0].song.strikesPerBeat = 3),
      'sections[0].song.strikesPerBeat',
      'Song 1: the number of pedal strokes per beat must be 0.5, 1, or 2; it is 3.',
    ],
    [
      'a bike',
      (r) => (r.bike.points[0][0] = -1),
      'bike.points[0][0]',
      'The bike, calibration point 1: the setting must be between 0 and 1,000; it is −1.',
    ],
    ['a clock', (r) => (r.startsAt = '25:00'), 'startsAt', 'The start time must be a time of day such as 18:30; it is “25:00”.'],
    [
      'an id',
      (r) => (r.id = '__proto__'),
      'id',
      'The ride’s id must start with a letter or digit and have only letters, digits, and . _ : - in it; it is “__proto__”.',
    ],
    ['no leader', (r) => (r.leaders = []), 'leaders', 'The list of instructors must have at least 1 entry.'],
  ]
  it.each(CASES)('%s', (_, breakIt, path, sentence) => {
    expect(broken(breakIt).map(({ path: at, text }) => [at, told(text)])).toEqual([[path, sentence]])
  })

  const RULES: [string, (ride: Loose) => void, string][] = [
    [
      'two sections of one id',
      (r) => (r.sections[1].id = 's1'),
      'Song 2: the id is used twice (“s1”); every song, block, and cue needs its own.',
    ],
    [
      'a part with the id of a block',
      (r) => (r.sections[0].blocks[1] = { id: 'x', rounds: 2, parts: [{ ...r.sections[0].blocks[1], id: 's1b1' }] }),
      'Song 1, set 2, part 1: the id is used twice (“s1b1”); every song, block, and cue needs its own.',
    ],
    [
      'two cues of one id',
      (r) => (r.sections[1].blocks[0].cues[0].id = 's1b1c1'),
      'Song 2, block 1, cue 1: the id is used twice (“s1b1c1”); every song, block, and cue needs its own.',
    ],
    [
      'seconds under a grid',
      (r) => (r.sections[0].blocks[0].length = { seconds: 20 }),
      'Song 1, block 1: the length must be in counts, because the song has a beat grid.',
    ],
    [
      'counts without a grid',
      (r) => {
        delete r.sections[0].song.grid
        r.sections[0].blocks.splice(1)
      },
      'Song 1, block 1: the length must be in seconds, because there is no beat grid to count by.',
    ],
    [
      'a leader who is not there',
      (r) => (r.sections[0].blocks[0].leader = 'sam'),
      'Song 1, block 1: the instructor is not one of this ride’s instructors (“sam”).',
    ],
    [
      'a speaker who is not there',
      (r) => (r.sections[0].blocks[0].mic = 'sam'),
      'Song 1, block 1: the speaker is not one of this ride’s instructors (“sam”).',
    ],
    [
      'a total upside down',
      (r) => (r.sections[0].blocks[0].resistance = { kind: 'total', from: 6, to: 4 }),
      'Song 1, block 1: the upper resistance must not be under the lower one; the range runs from 6 to 4.',
    ],
    [
      'a feel upside down',
      (r) => (r.sections[0].blocks[0].resistance = { kind: 'byFeel', from: 6, to: 4 }),
      'Song 1, block 1: the upper resistance must not be under the lower one; the range runs from 6 to 4.',
    ],
    [
      'an aim outside',
      (r) => (r.sections[0].blocks[0].resistance = { kind: 'total', from: 4, to: 6, aim: 7 }),
      'Song 1, block 1: the target resistance must be within its range, 4 to 6; it is 7.',
    ],
    [
      'a checkpoint upside down',
      (r) => (r.sections[0].blocks[0].resistance = { kind: 'change', mode: 'exact', steps: 1, checkpoint: { from: 2, to: 1 } }),
      'Song 1, block 1: the upper end of the checkpoint must not be under the lower one; the range runs from 2 to 1.',
    ],
    [
      'eights crossed',
      (r) => Object.assign(r.sections[0].blocks[0], { minEights: 8, maxEights: 4 }),
      'Song 1, block 1: the highest number of eights must not be below the lowest; they are 8 and 4.',
    ],
    [
      'out before in',
      (r) => (r.sections[0].inCount = 512),
      'Song 1: the end point must come after the starting point; the song plays from 512 to 512.',
    ],
    [
      'a quiet stretch without length',
      (r) => (r.sections[0].song.quiet = [{ from: 8, to: 8 }]),
      'Song 1, no-talk zone 1: the end must come after the start.',
    ],
    [
      'anchors that stand still',
      (r) =>
        (r.sections[0].song.grid.anchors = [
          [0, 1],
          [8, 1],
        ]),
      'Song 1, beat anchor 2: this entry must come later than the one before, in counts and in seconds.',
    ],
    [
      'anchors that race',
      (r) =>
        (r.sections[0].song.grid.anchors = [
          [0, 1],
          [800, 61],
        ]),
      'Song 1, beat anchor 2: this entry gives a tempo outside 20 to 400 bpm (800).',
    ],
    [
      'a base between two steps',
      (r) => (r.bike.base = 2.1),
      'The bike: the base must be a whole number of steps; 2.1 at 4 steps per unit is not.',
    ],
    [
      'a base above the top',
      (r) => (r.bike.base = 21),
      'The bike: the base must be between the lowest and the highest setting, 0 and 20; it is 21.',
    ],
    ['a bike upside down', (r) => (r.bike.min = 20), 'The bike: the highest setting must be above the lowest; they are 20 and 20.'],
    [
      'power that falls',
      (r) => (r.bike.points[1][1] = 1),
      'The bike, calibration point 2: this entry must be at a higher setting than the one before, with no fewer watts.',
    ],
    [
      'a heart at rest above its highest',
      (r) =>
        (r.riders = [
          {
            id: 'r',
            name: 'r',
            massKg: 70,
            age: 40,
            vo2max: 40,
            criticalPower: 160,
            wPrime: 9000,
            restingHr: 70,
            maxHr: 70,
            baseOffset: 0,
          },
        ]),
      'Rider 1: the max heart rate must be above the resting heart rate; it is 70.',
    ],
  ]
  it.each(RULES)('%s', (_, breakIt, sentence) => {
    expect(sentences(breakIt)).toEqual([sentence])
  })

  it('in the order of their places, and the rest by number', () => {
    const problems = broken((ride) => {
      for (const section of ride.sections) for (const block of section.blocks) block.effort.to = -1
    })
    expect(problems).toHaveLength(21)
    expect(problems.slice(0, 3).map(({ path }) => path)).toEqual([0, 1, 2].map((b) => `sections[0].blocks[${b}].effort.to`))
    expect(problems[20]!.path).toBe('')
    expect(told(problems[20]!.text)).toBe('And 47 more problems.')
  })

  it('allows one song to be ridden twice, and decimals that no binary number is', () => {
    expect(broken((ride) => (ride.sections[1].song.id = ride.sections[0].song.id))).toEqual([])
    expect(broken((ride) => Object.assign(ride.bike, { stepsPerUnit: 100, base: 0.29 }))).toEqual([])
  })
})

describe('what is no ride', () => {
  it.each([undefined, null, true, 7, 'ride', Symbol('ride'), () => demo(), 7n, [], [demo()], {}, new Map(), new Date(0)])('%s', (junk) => {
    const parsed = parseRide(junk)
    expect(parsed.ok ? [] : parsed.problems.map(({ path, text }) => [path, told(text)])).toEqual([
      ['', 'This isn’t a ride: it has no schema number.'],
    ])
  })

  it('a ride of a version to come', () => {
    expect(sentences((ride) => (ride.schema = 3))).toEqual(['This ride was made with a newer version (document 3). Update to open it.'])
  })

  it.each([0, -1, 1.5, '1', null, Number.NaN])('a ride of no version: %s', (schema) => {
    expect(sentences((ride) => (ride.schema = schema))).toEqual(['The schema number of this ride is damaged; it should be 1 or more.'])
  })

  it('any value at all gets a reason and no error', () => {
    fc.assert(
      fc.property(
        fc.anything({
          withBigInt: true,
          withDate: true,
          withMap: true,
          withSparseArray: true,
          withTypedArray: true,
          withNullPrototype: true,
        }),
        (junk) => {
          const parsed = parseRide(junk)
          expect(parsed.ok).toBe(false)
          for (const { text } of parsed.ok ? [] : parsed.problems) expect(told(text)).toMatch(/^[\p{Lu}“].*\.$/su)
        },
      ),
      { numRuns: 300 },
    )
  })

  it('a ride with any value in the place of one of its own is a ride or gets a reason', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 2, items: 3 }), fc.nat(), fc.anything(), (ride, where, junk) => {
        const places = placesOf(ride)
        const { owner, key } = places[where % places.length]!
        owner[key] = junk
        const parsed = parseRide(ride)
        if (parsed.ok) expect(parseRide(parsed.ride)).toStrictEqual(parsed)
        else for (const { text } of parsed.problems) expect(told(text)).toMatch(/^[\p{Lu}“].*\.$/su)
      }),
      { numRuns: 300 },
    )
  })
})

/** Every property of a document, by the object that holds it. */
function placesOf(value: unknown): { owner: Record<string, unknown>; key: string }[] {
  if (typeof value !== 'object' || value === null) return []
  const owner = value as Record<string, unknown>
  return Object.keys(owner).flatMap((key) => [{ owner, key }, ...placesOf(owner[key])])
}

describe('the hearts of riders', () => {
  const rider = { id: 'r', name: 'R', massKg: 70, age: 40, vo2max: 40, criticalPower: 165, wPrime: 14_000, restingHr: 60, baseOffset: 0 }
  const problems = (hearts: object) => {
    const parsed = parseRide({ ...smallRide(), riders: [{ ...rider, ...hearts }] })
    return parsed.ok ? [] : parsed.problems.map(({ text }) => told(text))
  }

  it('rise from rest by the thresholds to the highest', () => {
    expect(problems({ firstThresholdHr: 120, secondThresholdHr: 150, maxHr: 180 })).toEqual([])
    expect(problems({ secondThresholdHr: 150 })).toEqual([])
    expect(problems({ maxHr: 60 })).toEqual(['Rider 1: the max heart rate must be above the resting heart rate; it is 60.'])
    expect(problems({ firstThresholdHr: 150, secondThresholdHr: 140 })).toEqual([
      'Rider 1: the heart rate at the second threshold must be in order: resting, first threshold, second threshold, max; it is 140.',
    ])
    expect(problems({ secondThresholdHr: 180, maxHr: 175 })).toEqual([
      'Rider 1: the heart rate at the second threshold must be in order: resting, first threshold, second threshold, max; it is 180.',
    ])
  })
})

describe('what means harm', () => {
  const hostile = (make: () => unknown) => {
    const parsed = parseRide(make())
    return parsed.ok ? 'a ride' : parsed.problems.map(({ text }) => told(text)).join(' ')
  }

  it('a getter that throws', () => {
    expect(
      hostile(() =>
        Object.defineProperty(demo(), 'title', {
          enumerable: true,
          get: () => {
            throw new Error('no')
          },
        }),
      ),
    ).toBe('This can’t be read.')
  })

  it('a proxy that throws at every touch', () => {
    const refuse = () => {
      throw new Error('no')
    }
    expect(hostile(() => new Proxy({}, { get: refuse, has: refuse, ownKeys: refuse, getPrototypeOf: refuse }))).toBe('This can’t be read.')
    const { proxy, revoke } = Proxy.revocable({}, {})
    revoke()
    expect(hostile(() => proxy)).toBe('This can’t be read.')
  })

  it('a getter that answers otherwise the second time', () => {
    let asked = 0
    const ride = Object.defineProperty(demo(), 'slotMinutes', { enumerable: true, get: () => (asked++ === 0 ? 45 : 'gotcha') })
    const parsed = parseRide(ride)
    expect(parsed.ok && parsed.ride.slotMinutes).toBe(45)
  })

  it('a circle', () => {
    const ride = demo()
    ride.sections[0].self = ride
    expect(hostile(() => ride)).toMatch(/^This can’t be opened: it’s (nested far deeper|far larger) than any ride\.$/)
  })

  it('a nest a hundred thousand deep', () => {
    let nest: unknown = 1
    for (let depth = 0; depth < 100_000; depth++) nest = [nest]
    expect(hostile(() => ({ ...demo(), nest }))).toBe('This can’t be opened: it’s nested far deeper than any ride.')
  })

  it('a list without end', () => {
    const endless = new Proxy([], { get: (_, key) => (key === 'length' ? 4_294_967_295 : demo().sections[0]) })
    expect(hostile(() => ({ ...demo(), sections: endless }))).toBe('This can’t be opened: it’s far larger than any ride.')
    expect(hostile(() => ({ ...demo(), sections: new Array(1_000_000) }))).toBe('This can’t be opened: it’s far larger than any ride.')
  })

  it('more text than a ride has', () => {
    expect(hostile(() => ({ ...demo(), notes: 'x'.repeat(1_100_000) }))).toBe('This can’t be opened: it’s far larger than any ride.')
    expect(sentences((ride) => (ride.title = 'x'.repeat(LIMITS.line + 1)))).toEqual([
      `The title is too long; the limit is 300 characters; it is “${'x'.repeat(40)}…”.`,
    ])
  })

  it('a few letters that make a class without end', () => {
    const endless = (breakIt: (set: Loose) => void) =>
      sentences((ride) => {
        const [section] = ride.sections
        const set = { id: 'endless', rounds: 2, parts: [section.blocks[0]] }
        section.blocks = [set]
        breakIt(set)
      })
    const copies = (of: Loose, times: number) =>
      Array.from({ length: times }, (_, i) => ({
        ...of,
        id: `c${i}`,
        cues: of.cues.map((cue: Loose, c: number) => ({ ...cue, id: `c${i}.${c}` })),
      }))
    const played = (rounds: number, parts: number) =>
      endless((set) => Object.assign(set, { rounds, parts: copies({ ...set.parts[0], cues: [] }, parts) }))
    expect(played(60, 60)[0]).toMatch(/^The ride has 3,\d{3} blocks when all rounds are counted; the limit is 1,000\.$/)
    expect(played(15, 60)).toEqual([])
    const cue = { moment: 'form', lead: { counts: 0 }, text: 'Shoulders down.' }
    const spoken = (rounds: number, cues: number) =>
      endless((set) =>
        Object.assign(set, {
          rounds,
          parts: [{ ...set.parts[0], cues: Array.from({ length: cues }, (_, i) => ({ ...cue, id: `q${i}` })) }],
        }),
      )
    expect(spoken(100, 40)[0]).toMatch(/^The ride has 4,\d{3} cues to say; the limit is 3,000\.$/)
    expect(spoken(70, 40)).toEqual([])
    const words = endless((set) => Object.assign(set, { rounds: 2, parts: copies({ ...set.parts[0], notes: 'a'.repeat(9_000) }, 40) }))
    expect(words[0]).toMatch(/^The ride has 36\d,\d{3} letters on its blocks and cues; the limit is 300,000\.$/)
    const long = endless((set) => Object.assign(set, { rounds: 100, parts: [{ ...set.parts[0], length: { counts: 90_000 } }] }))
    expect(long[0]).toMatch(/^The ride lasts [\d,]+ hours; the limit is 24\.$/)
  })

  it('more sections than can be opened', () => {
    expect(
      sentences(
        (ride) => (ride.sections = Array.from({ length: LIMITS.sections + 1 }, (_, s) => ({ id: `x${s}`, leadInSeconds: 0, blocks: [] }))),
      ),
    ).toEqual(['The list of songs has too many entries; the limit is 100.'])
  })

  it('values lent by a prototype that the file names', () => {
    const lent = JSON.stringify(demo()).replace('"hands":"centre"', '"__proto__":{"hands":"centre"}')
    expect(hostile(() => JSON.parse(lent))).toBe('Song 1, block 1: the hand position is missing.')
  })

  it('keys that reach for the prototype', () => {
    const ride = JSON.parse(
      JSON.stringify(demo()).replace('{', '{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}},'),
    )
    ride.houseRules = JSON.parse('{"__proto__":1,"hardEffort":8}')
    const parsed = parseRide(ride)
    expect(parsed.ok && parsed.ride.houseRules).toStrictEqual({ hardEffort: 8 })
    expect(parsed.ok && Object.getPrototypeOf(parsed.ride)).toBe(Object.prototype)
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined()
    expect(parsed.ok && 'polluted' in (parsed.ride as Ride & { polluted?: boolean })).toBe(false)
  })
})
