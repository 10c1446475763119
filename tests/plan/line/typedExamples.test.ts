import { describe, expect, it } from 'vitest'
import { DEFAULT_BIKE, DEFAULT_LEADER } from '#plan/defaults.ts'
import { itemsOfLines } from '#plan/line/readLine.ts'
import { type Block, CURRENT_SCHEMA, type Ride, type Section } from '#plan/model.ts'
import { de } from '#words/de/index.ts'
import { en } from '#words/en/index.ts'

const COUNTED: Section = {
  id: 's',
  leadInSeconds: 0,
  song: {
    id: 'm',
    title: 'Slow Ferry',
    lengthSeconds: 240,
    strikesPerBeat: 1,
    grid: {
      anchors: [
        [0, 0],
        [128, 60],
      ],
      beatsPerBar: 4,
    },
  },
  blocks: [],
}
const TIMED: Section = { id: 't', leadInSeconds: 0, song: null, blocks: [] }

const RIDE: Ride = {
  schema: CURRENT_SCHEMA,
  id: 'r',
  title: '',
  level: 'mixed',
  slotMinutes: 45,
  briefingSeconds: 0,
  clearUpSeconds: 0,
  datum: 'base',
  bike: DEFAULT_BIKE,
  leaders: [DEFAULT_LEADER],
  sections: [COUNTED, TIMED],
}

const total = (from: number, to = from) => ({ kind: 'total', from, to })
const change = (steps: number, mode = 'exact') => ({ kind: 'change', mode, steps })
const eights = (count: number) => ({ counts: count * 8 })
const level = (from: number, to = from) => ({ from, to })

// biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
const ALTERNATING = { then: 'alternate' }

type Want = Partial<Record<keyof Block, unknown>>

const ENGLISH: readonly (readonly [string, Want, Section?])[] = [
  [
    'seated climb 8 to 5 effort 7 wide',
    { terrain: 'hill', posture: 'seated', hands: 'wide', length: eights(8), resistance: total(20), effort: level(7) },
  ],
  [
    'wide effort 7 8 climb to 5 seated',
    { terrain: 'hill', posture: 'seated', hands: 'wide', length: eights(8), resistance: total(20), effort: level(7) },
  ],
  ['jumps on 4 x8, add half', { terrain: 'jumps', move: { name: 'jump', counts: 4 }, length: eights(8), resistance: change(2) }],
  ['push 20s', { terrain: 'push', length: { seconds: 20 }, effort: level(9) }, TIMED],
  ['rest 4 sip', { terrain: 'recover', length: eights(4), water: true, effort: level(3) }],
  ['standing climb', { terrain: 'hill', posture: 'standing', hands: 'ends', effort: level(7), resistance: total(10) }],
  ['climb standing 1:30', { posture: 'standing', length: { seconds: 90 } }, TIMED],
  ['climb 2 min', { length: { seconds: 120 } }, TIMED],
  ['climb 1 min 30 s', { length: { seconds: 90 } }, TIMED],
  ['flat 64 counts', { terrain: 'flat', length: { counts: 64 } }],
  ['flat 8+4', { length: { counts: 68 } }],
  ['flat 8 eights + 4', { length: { counts: 68 } }],
  ['flat 2 phrases', { length: { counts: 64 } }],
  ['flat x6', { length: eights(6) }],
  ['flat 6x', { length: eights(6) }],
  ['climb half on', { resistance: change(2) }],
  ['climb one turn on', { resistance: change(4) }],
  ['climb quarter off', { resistance: change(-1) }],
  ['climb take off three quarters', { resistance: change(-3) }],
  ['climb take half a turn off', { resistance: change(-2) }],
  ['climb +1½', { resistance: change(6) }],
  ['climb -¼', { resistance: change(-1) }],
  ['climb add one and a half', { resistance: change(6) }],
  ['climb at least half on', { resistance: change(2, 'atLeast') }],
  ['climb add half or more', { resistance: change(2, 'atLeast') }],
  ['climb half on if you have it', { resistance: change(2, 'ifYouHaveIt') }],
  ['climb to 2–3', { resistance: total(8, 12) }],
  ['climb to 2 or more', { resistance: { kind: 'total', from: 8, to: 8, orMore: true } }],
  ['climb to 1 1/2', { resistance: total(6) }],
  ['climb by feel 2-3', { resistance: { kind: 'byFeel', from: 8, to: 12 } }],
  ['climb stay', { resistance: { kind: 'keep' } }],
  ['stretch all off', { terrain: 'stretch', resistance: { kind: 'allOff' } }],
  ['climb effort 5 to 8', { effort: level(5, 8) }],
  ['climb effort 5-8½', { effort: level(5, 8.5) }],
  ['surge all out 15 sec', { terrain: 'surge', allOut: true, length: { seconds: 15 } }, TIMED],
  ['flat 80 to 95 rpm', { cadence: { rpm: 80, rampTo: 95 } }],
  ['flat 88 rpm off the beat', { cadence: { rpm: 88 }, strikesPerBeat: null }],
  ['push double time', { strikesPerBeat: 2 }],
  ['side leans on 8 right first alternating', { terrain: 'run', move: { name: 'side lean', counts: 8, side: 'right', ...ALTERNATING } }],
  ['travel backs 4 on 8', { move: { name: 'travel-back', counts: 8 }, length: eights(4) }],
  ['climb jumps on 8', { terrain: 'hill', move: { name: 'jump', counts: 8 } }],
  ['hover 4', { terrain: 'hill', posture: 'hovering', length: eights(4) }],
  ['run left foot walk', { terrain: 'run', lead: 'left', walk: true }],
  ['stretch legs still', { cadence: 'legsStill' }],
]

const GERMAN: readonly (readonly [string, Want, Section?])[] = [
  [
    'Berg sitzend 8 bis 5 Anstrengung 7 breit',
    { terrain: 'hill', posture: 'seated', hands: 'wide', length: eights(8), resistance: total(20), effort: level(7) },
  ],
  [
    'breit Anstrengung 7 8 Berg bis 5 im Sitzen',
    { terrain: 'hill', posture: 'seated', hands: 'wide', length: eights(8), resistance: total(20), effort: level(7) },
  ],
  ['Jumps auf 4 x8, halbe drauf', { terrain: 'jumps', move: { name: 'Jump', counts: 4 }, length: eights(8), resistance: change(2) }],
  ['Push 20s', { terrain: 'push', length: { seconds: 20 } }, TIMED],
  ['Pause 4 trinken', { terrain: 'recover', length: eights(4), water: true }],
  ['Berg im Stehen', { posture: 'standing', hands: 'ends' }],
  ['Berg 1:30', { length: { seconds: 90 } }, TIMED],
  ['Berg 2 Min', { length: { seconds: 120 } }, TIMED],
  ['Flachstück 64 Zählzeiten', { terrain: 'flat', length: { counts: 64 } }],
  ['flach 8+4', { length: { counts: 68 } }],
  ['flach 8 Achter', { length: eights(8) }],
  ['flach 2 Phrasen', { length: { counts: 64 } }],
  ['flach 6 mal', { length: eights(6) }],
  ['Berg eine Umdrehung drauf', { resistance: change(4) }],
  ['Berg halbe Umdrehung mehr', { resistance: change(2) }],
  ['Berg viertel runter', { resistance: change(-1) }],
  ['Berg dreiviertel raus', { resistance: change(-3) }],
  ['Berg plus 1,5', { resistance: change(6) }],
  ['Berg minus ¼', { resistance: change(-1) }],
  ['Berg anderthalb drauf', { resistance: change(6) }],
  ['Berg mindestens halbe drauf', { resistance: change(2, 'atLeast') }],
  ['Berg halbe drauf wer kann', { resistance: change(2, 'ifYouHaveIt') }],
  ['Berg bis 2–3', { resistance: total(8, 12) }],
  ['Berg bis 2 oder mehr', { resistance: { kind: 'total', from: 8, to: 8, orMore: true } }],
  ['Berg nach Gefühl 2-3', { resistance: { kind: 'byFeel', from: 8, to: 12 } }],
  ['Berg bleibt', { resistance: { kind: 'keep' } }],
  ['Dehnen alles runter', { terrain: 'stretch', resistance: { kind: 'allOff' } }],
  ['Berg Anstrengung 5 bis 8', { effort: level(5, 8) }],
  ['Berg Anstrengung 7,5', { effort: level(7.5) }],
  ['Antritt Vollgas 15 Sekunden', { terrain: 'surge', allOut: true, length: { seconds: 15 } }, TIMED],
  ['flach 80 bis 95 U/min', { cadence: { rpm: 80, rampTo: 95 } }],
  ['flach neben dem Beat', { strikesPerBeat: null }],
  [
    'Seitneigungen auf 8 rechts zuerst im Wechsel',
    { terrain: 'run', move: { name: 'Seitneigung', counts: 8, side: 'right', ...ALTERNATING } },
  ],
  ['Travel-Backs auf 8', { move: { name: 'Travel-Back', counts: 8 } }],
  ['Hover 4', { terrain: 'hill', posture: 'hovering', length: eights(4) }],
  ['Laufen linker Fuß', { terrain: 'run', lead: 'left' }],
]

const newId = () => 'new'

const LANGUAGES = [
  ['en', en.lineWords, ENGLISH],
  ['de', de.lineWords, GERMAN],
] as const

describe.each(LANGUAGES)('a block typed in %s', (language, lexicon, examples) => {
  it.each(examples.map(([line, want, section = COUNTED]) => ({ line, want, section })))('$line', ({ line, want, section }) => {
    const { items, problems } = itemsOfLines(line, lexicon, { ride: { ...RIDE, language }, section }, newId)[0]!
    expect(problems).toEqual([])
    expect(items).toHaveLength(1)
    expect(items[0]).toMatchObject(want)
  })
})

describe('what is not understood', () => {
  const PROBLEMS: readonly (readonly [string, string, string, Section?])[] = [
    ['climb 8 bananas', 'unknown', 'bananas'],
    ['seated 8', 'noKind', 'seated 8'],
    ['climb flat 8', 'twice', 'flat'],
    ['climb 8 to 5 add half', 'twice', 'add half'],
    ['climb effort', 'needsNumber', 'effort'],
    ['climb effort 12', 'effortOutside', 'effort 12'],
    ['climb to 1.3', 'noSuchStep', 'to 1.3'],
    ['climb 20', 'howLong', '20', TIMED],
    ['climb 2 turns', 'onOrOff', '2 turns'],
    ['climb 300 rpm', 'rpmOutside', '300 rpm'],
    ['climb 2.3', 'partOfCount', '2.3'],
  ]

  it.each(PROBLEMS.map(([line, kind, word, section = COUNTED]) => ({ line, kind, word, section })))(
    'in “$line” is named: $kind, at “$word”',
    ({ line, kind, word, section }) => {
      const { problems } = itemsOfLines(line, en.lineWords, { ride: RIDE, section }, newId)[0]!
      expect(problems.map((problem) => [problem.kind, line.slice(problem.from, problem.to)])).toEqual([[kind, word]])
    },
  )

  it('leaves the rest of the line standing', () => {
    const { items } = itemsOfLines('seated climb zigzag 8 effort 7', en.lineWords, { ride: RIDE, section: COUNTED }, newId)[0]!
    expect(items[0]).toMatchObject({ terrain: 'hill', length: eights(8), effort: level(7) })
  })
})

describe('several blocks of a line', () => {
  const read = (line: string, lexicon = en.lineWords) => itemsOfLines(line, lexicon, { ride: RIDE, section: COUNTED }, newId)[0]!

  it('stand between slashes, and a slash in a fraction or in what is said is none', () => {
    expect(read('climb 8 to 3/4 / rest 4 “Sip / breathe.” / jumps on 4 x8')).toMatchObject({
      items: [
        { terrain: 'hill', length: eights(8), resistance: total(3) },
        { terrain: 'recover', length: eights(4), cues: [{ text: 'Sip / breathe.' }] },
        { terrain: 'jumps', length: eights(8) },
      ],
      problems: [],
      rest: '',
      whole: true,
    })
  })

  it('have words said before them, then in them from their beginning, on whole eights', () => {
    const [block] = read('climb 12 “Up we go.” “Hips back.” “Halfway.” “Last four.”').items as Block[]
    expect(block!.cues.map(({ moment, lead, text }) => [moment, lead, text])).toEqual([
      ['announce', { counts: 8 }, 'Up we go.'],
      ['form', { counts: 1_000 }, 'Hips back.'],
      ['form', { counts: 64 }, 'Halfway.'],
      ['form', { counts: 32 }, 'Last four.'],
    ])
  })

  it('become a set where rounds stand before them, up to the end of the line', () => {
    expect(read('flat 8 / 4 rounds of push 4 effort 9 / rest 4')).toMatchObject({
      items: [{ terrain: 'flat' }, { rounds: 4, parts: [{ terrain: 'push', effort: level(9) }, { terrain: 'recover' }] }],
      problems: [],
    })
    expect(read('3 Runden: Push 4 / Pause 4', de.lineWords)).toMatchObject({ items: [{ rounds: 3, parts: { length: 2 } }], problems: [] })
  })

  it('are a set only with rounds a set can have, and not yet while one of its parts names no block', () => {
    expect(read('900 rounds: push 4')).toMatchObject({ problems: [{ kind: 'roundsOutside', word: '900 rounds' }], whole: false })
    expect(read('0 rounds: push 4')).toMatchObject({ problems: [{ kind: 'roundsOutside' }], whole: false })
    expect(read('2 rounds: push 4 / re')).toMatchObject({ items: [{ parts: { length: 1 } }], whole: false })
    expect(read('2 rounds:')).toMatchObject({ items: [], rest: '2 rounds:' })
  })

  it('name what is wrong where it stands in the whole line', () => {
    const { problems, rest } = read('climb 8 / zigzag / rest 4')
    expect(problems).toMatchObject([
      { kind: 'unknown', from: 10, to: 16 },
      { kind: 'noKind', word: 'zigzag' },
    ])
    expect(rest).toBe('zigzag')
  })
})

describe('several lines', () => {
  it('are a block each, and lines that name none say so by their number', () => {
    const read = itemsOfLines('climb 8\n\nnothing here\r\nrest 4', en.lineWords, { ride: RIDE, section: COUNTED }, newId)
    expect(read.map(({ line, items }) => [line, (items[0] as Block | undefined)?.terrain])).toEqual([
      [0, 'hill'],
      [2, undefined],
      [3, 'recover'],
    ])
  })
})
