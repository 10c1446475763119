import { plainMove } from '#engine/cadence/moves.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { type Block, isSet, type Ride } from '#plan/model.ts'
import { told as inEnglish } from '#tests/support/told.ts'

/** A draft with what is computed of it and what is said of its songs. */
export interface Worded {
  ride: Ride
  report: RideReport
  songs: readonly { sectionId: string; text: string }[]
}

const blocksOf = (ride: Ride): Block[] =>
  ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))

/** Distinct texts among a draft's cues, 0–1: of those with words, and with count-ins, which have none, counted in. */
export function distinctShare(ride: Ride): { worded: number; all: number } {
  const texts = blocksOf(ride).flatMap(({ cues }) => cues.map(({ text }) => text))
  const worded = texts.filter((text) => text !== '')
  return { worded: new Set(worded).size / worded.length, all: new Set(texts).size / texts.length }
}

/**
 * Words about load, and the planned effort they may be said of; kept apart from the program's own table, and wider only
 * where a body is meant.
 */
const LEXICON: readonly (readonly [words: RegExp, least: number, most: number])[] = [
  [/\b(?:heavy|thick|steep|grind|mud)\b/i, 6, 10],
  [/\b(?:hard|burns?|breathing hard)\b/i, 7, 10],
  [/\b(?:one word|word at a time|everything|all you have|breathless|hang on)\b/i, 8, 10],
  [/\bstrong\b/i, 6, 10],
  [/\b(?:easy|gentle|effortless|next to nothing|barely)\b/i, 0, 4.5],
  [/\b(?:chat|full sentences)\b/i, 0, 4.5],
  [/\b(?:recover|catch your breath)\b/i, 0, 5],
]
const BODY =
  /\b(?:light|easy|soft|loose|heavy|strong)\s+(?:\p{L}+\s+)?(?:hands?|heels|elbows?|shoulders?|arms?|core|face|legs)\b|scrape the mud off your shoes/giu

const told = (text: string): string => text.replace(BODY, ' ')

/** Every word about load that does not fit its block; a preview may be about any block of its song from there on. */
export function misfits({ report }: Worded): string[] {
  const found: string[] = []
  const check = (text: string, blocks: readonly PlayedBlock[]) => {
    for (const [words, least, most] of LEXICON) {
      if (!words.test(told(text))) continue
      const fits = blocks.some(
        ({ block: { effort } }) => Math.max(effort.from, effort.to) >= least && Math.max(effort.from, effort.to) <= most,
      )
      if (!fits) found.push(`“${text}” at effort ${Math.max(blocks[0]!.block.effort.from, blocks[0]!.block.effort.to)}`)
    }
  }
  for (const played of report.blocks) {
    const { cues, feel } = played.block
    const song = report.blocks.filter(({ section, index }) => section === played.section && index >= played.index)
    if (feel) check(feel, [played])
    for (const { moment, text } of cues) check(text, moment === 'preview' ? song : [played])
    // "Two pushes coming up" is said in the block before them.
    for (const { moment, text } of cues) if (moment === 'form' && /\bout of ten\b/.test(text)) check(text, song)
  }
  return found
}

/** Labels and lines about songs that name what is not ridden. */
export function falseNames({ ride, songs }: Worded): string[] {
  const labels = blocksOf(ride).flatMap((block) =>
    namesOnly(block.label ?? '', [block]) ? [] : [`${block.label} for ${block.terrain} ${block.posture}`],
  )
  const lines = ride.sections.flatMap((section) => {
    const text = songs.find(({ sectionId }) => sectionId === section.id)?.text
    const what = text === undefined ? '' : text.slice(text.indexOf(': ')).split(/[;.]|, (?:to warm|the finish|energy|\d)/)[0]!
    const blocks = section.blocks.flatMap((item) => (isSet(item) ? item.parts : [item]))
    return namesOnly(what, blocks) ? [] : [`“${what}” for ${blocks.map(({ label }) => label).join(', ')}`]
  })
  return [...labels, ...lines]
}

/** Words of names, and what has to be ridden for them. */
const NAMES: readonly (readonly [word: RegExp, isRidden: (block: Block) => boolean])[] = [
  [/\bseated\b/, ({ posture }) => posture === 'seated'],
  [/\bstanding\b/, ({ posture }) => posture === 'standing'],
  [/\bhover/, ({ posture }) => posture === 'hovering'],
  [/\b(?:climb|hill)\b/, ({ terrain }) => terrain === 'hill'],
  [/\bflats?\b/, ({ terrain }) => terrain === 'flat' || terrain === 'tempo'],
  [/\bruns?\b/, ({ terrain }) => terrain === 'run'],
  [/\btempo\b/, ({ terrain }) => terrain === 'tempo'],
  [/\bpush/, ({ terrain }) => terrain === 'push'],
  [/\bsurge/, ({ terrain }) => terrain === 'surge'],
  [/\brecover/, ({ terrain }) => terrain === 'recover'],
  [/\broll[ -]out\b/, ({ terrain }) => terrain === 'flush'],
  [/\bstretch\b/, ({ terrain }) => terrain === 'stretch'],
  [/\bhold\b/, ({ terrain }) => terrain === 'hold'],
  ...(['jump', 'side lean', 'press', 'corner', 'travel-back'] as const).map(
    (name) => [new RegExp(`\\b${name}`), ({ move }: Block) => move !== undefined && plainMove(move.name) === name] as const,
  ),
]

const namesOnly = (name: string, blocks: readonly Block[]): boolean =>
  NAMES.every(([word, isRidden]) => !word.test(name) || blocks.some(isRidden))

/** Rules about what is said; a draft's words may earn none that is a problem or a warning. */
const SPOKEN = new Set(['cueNumbers', 'cueLate', 'cueRoom', 'cueCollisions', 'resistanceFirst', 'quietKept', 'closingWords'])

/** What the engine finds wrong with the words. */
export const spokenFaults = ({ report }: Worded): string[] => [
  ...report.findings.filter(({ rule, severity }) => SPOKEN.has(rule) && severity !== 'hint').map(({ text }) => inEnglish(text)),
  ...report.cues.mismatches.map(({ said, planned }) => `${said} for ${planned}`),
]

/** Moves that come without a word on how they are done the first time. */
export const untaught = ({ report }: Worded): string[] =>
  report.findings.filter(({ rule }) => rule === 'moveWithoutForm').map(({ text }) => inEnglish(text))

/** Efforts of eight and more, and all that is ridden standing, without an easier way. */
export const withoutOption = ({ ride }: Worded): string[] =>
  blocksOf(ride)
    .filter(
      ({ effort, posture, terrain, easier }) =>
        !easier && terrain !== 'stretch' && (Math.max(effort.from, effort.to) >= 8 || posture === 'standing'),
    )
    .map(({ label }) => label ?? '')
