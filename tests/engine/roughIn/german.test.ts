import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { roughIn } from '#engine/roughIn/roughIn.ts'
import { english } from '#engine/roughIn/words/english/english.ts'
import { german } from '#engine/roughIn/words/german/german.ts'
import { type Block, isSet, type Ride } from '#plan/model.ts'
import { blockFromPattern, PATTERNS } from '#plan/patterns/patterns.ts'
import { draftTasks } from '#tests/support/drafts/draftPlaylists.ts'
import { distinctShare, type Worded, withoutOption } from '#tests/support/drafts/draftWords.ts'
import { smallRide } from '#tests/support/smallRide.ts'

const DRAFTS: readonly Worded[] = draftTasks(8_1)
  .filter((_, index) => index % 24 === 4)
  .map(({ ride, seed, drives }) => {
    const drafted = roughIn({ ...ride, language: 'de' }, { seed, drives })!
    return { ride: drafted.ride, report: computeRide(drafted.ride), songs: [] }
  })

const blocksOf = (ride: Ride): Block[] =>
  ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))

const textsOf = (ride: Ride): string[] =>
  blocksOf(ride).flatMap(({ label = '', feel = '', easier, harder, cues }) => [
    label,
    feel,
    easier?.text ?? '',
    harder?.text ?? '',
    ...cues.map(({ text }) => text),
  ])

/** Words of English that no German sentence of a class has. */
const ENGLISH = /\b(?:the|and|your|you|seconds?|minutes?|hold|legs|hands|easy|seated|climb|more|less|with|out of|foot|next|song has)\b/

/** German words about load, and the planned effort they may be said of; kept apart from the program's own table. */
const LEXICON: readonly (readonly [words: RegExp, least: number, most: number])[] = [
  [/(?<!\p{L})(?:schwere?[rsn]?|steil\p{L}*|zäh\p{L}*)(?!\p{L})/iu, 6, 10],
  [/(?<!\p{L})hart\p{L}*/iu, 7, 10],
  [/(?<!\p{L})(?:ein wort|atemlos|fast alles)(?!\p{L})/iu, 8, 10],
  [/(?<!\p{L})kräftig\p{L}*/iu, 6, 10],
  [/(?<!\p{L})(?:sanft\p{L}*|mühelos|kaum druck|fast nichts|locker\p{L}*)/iu, 0, 4.5],
  [/(?<!\p{L})(?:plauder\p{L}*|ganze sätze)(?!\p{L})/iu, 0, 4.5],
  [/(?<!\p{L})erhol\p{L}*/iu, 0, 5],
]
const BODY =
  /(?<!\p{L})(?:leicht|locker|weich|schwer|stark)\p{L}*\s+(?:händen?|schultern?|gesicht|kiefer|fersen|griff)(?!\p{L})|(?<!\p{L})(?:griff|kiefer|hände|schultern|handgelenke|finger|fersen)\s+(?:gerade, finger\s+)?(?:locker|leicht|schwer)\p{L}*/giu

describe('drafts in German', () => {
  it('have no English in them', () => {
    expect(DRAFTS.flatMap(({ ride }) => textsOf(ride)).filter((text) => ENGLISH.test(text))).toEqual([])
    expect(DRAFTS.some(({ ride }) => textsOf(ride).some((text) => /Umdrehung/.test(text)))).toBe(true)
  })

  it('ride what the same draft rides in English', () => {
    const [task] = draftTasks(8_1)
    const bare = (ride: Ride) =>
      blocksOf(ride).map(({ terrain, posture, effort, resistance, length, move }) => [
        terrain,
        posture,
        effort,
        resistance,
        length,
        move?.counts,
      ])
    const [en, de] = (['en', 'de'] as const).map((language) => roughIn({ ...task!.ride, language }, { seed: task!.seed })!.ride)
    expect(bare(de!)).toEqual(bare(en!))
  })

  it('repeat themselves in a third at most', () => {
    for (const { ride } of DRAFTS) {
      expect(distinctShare(ride).all).toBeGreaterThanOrEqual(2 / 3)
      expect(distinctShare(ride).worded).toBeGreaterThanOrEqual(2 / 3)
    }
  })

  it('fit the load of what they are said of', () => {
    const told = (text: string) => text.replace(BODY, ' ')
    const wrong = DRAFTS.flatMap(({ report }) =>
      report.blocks.flatMap(({ block: { feel = '', cues, effort } }) =>
        [feel, ...cues.flatMap(({ moment, text }) => (moment === 'preview' || /von zehn/.test(text) ? [] : [text]))].flatMap((text) => {
          const most = Math.max(effort.from, effort.to)
          return LEXICON.some(([words, least, top]) => words.test(told(text)) && (most < least || most > top))
            ? [`“${text}” at ${most}`]
            : []
        }),
      ),
    )
    expect(wrong).toEqual([])
  })

  it('offer an easier way for everything hard or standing', () => {
    expect(DRAFTS.flatMap(withoutOption)).toEqual([])
  })

  it('earn no finding about their words', () => {
    const about = new Set(['cueNumbers', 'cueLate', 'cueRoom', 'cueCollisions', 'resistanceFirst', 'quietKept', 'closingWords'])
    expect(
      DRAFTS.flatMap(({ report }) =>
        report.findings.filter(({ rule, severity }) => about.has(rule) && severity !== 'hint').map(({ rule }) => rule),
      ),
    ).toEqual([])
  })

  it('have as many phrases as in English', () => {
    for (const kind of Object.keys(english.phrases.tails) as (keyof typeof english.phrases.tails)[]) {
      expect(german.phrases.tails[kind].length, kind).toBe(english.phrases.tails[kind].length)
      expect(german.phrases.feels[kind].length, kind).toBe(english.phrases.feels[kind].length)
    }
  })
})

it('starter patterns speak the language of the ride', () => {
  const ride = { ...smallRide(), language: 'de' as const }
  const section = ride.sections[0]!
  for (const pattern of PATTERNS) {
    const block = blockFromPattern(pattern, ride, section, () => 'id')
    expect([block.label, block.feel, block.cues[0]!.text].join(' ')).not.toMatch(ENGLISH)
  }
})
