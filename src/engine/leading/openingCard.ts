import { constantsOf } from '#engine/constants.ts'
import { countWords } from '#engine/cues/countWords.ts'
import { speechSeconds, wordsPerSecond } from '#engine/cues/speechRate.ts'
import { numberWords } from '#engine/ledger/numberWords.ts'
import type { PlayedBlock } from '#engine/report.ts'
import { type Block, TERRAINS, type Terrain } from '#plan/model.ts'
import { joinWords } from '#plan/names.ts'
import type { Seconds } from '#units/units.ts'
import type { Plan } from './led.ts'

/** What is said before the first one, and how long it takes. */
export interface OpeningCard {
  /** Two: what comes, and how to ride it. */
  sentences: readonly [string, string]
  seconds: Seconds
  /** Of the briefing, what the words leave; negative when they do not fit. */
  left: Seconds
}

const TERRAIN_WORDS: Record<Terrain, string> = {
  flat: 'flats',
  tempo: 'steady tempo',
  hill: 'hills',
  run: 'runs',
  jumps: 'jumps',
  surge: 'surges',
  push: 'pushes',
  recover: '',
  flush: '',
  stretch: '',
  hold: 'holds',
}

/** The card: two sentences made from the plan, at the first leader's calm rate. */
export function openingCard(plan: Plan): OpeningCard {
  const sentences = [whatComes(plan), howToRide(plan)] as const
  const rules = constantsOf(plan.ride)
  const rate = wordsPerSecond(plan.ride.leaders[0]!.wordsPerMinute, 0, rules)
  const seconds = speechSeconds(countWords(sentences.join(' ')), rate, rules)
  return { sentences, seconds, left: plan.ride.briefingSeconds - seconds }
}

/** "45 minutes, 13 songs: hills, flats and jumps, hardest around minute 37." */
function whatComes({ ride, report }: Plan): string {
  const songs = ride.sections.filter(({ song }) => song).length
  const time = `${Math.round(ride.slotMinutes)} minutes`
  const music = songs > 0 ? `, ${songs} ${songs === 1 ? 'song' : 'songs'}` : ''
  const terrains = roadsOf(report.blocks.map(({ block, from, to }) => ({ block, seconds: to - from })))
  const roads = terrains.length > 0 ? `: ${joinWords(terrains)}` : ''
  const peak = report.recovery.bouts.reduce<{ peak: number; from: Seconds } | undefined>(
    (most, bout) => (most === undefined || bout.peak >= most.peak ? bout : most),
    undefined,
  )
  const hardest = peak ? `, hardest around minute ${Math.round(peak.from / 60)}` : ''
  return `${time}${music}${roads}${hardest}.`
}

/** The kinds of road that take most of the time, at most three; what is easy is no road. */
function roadsOf(blocks: readonly { block: Block; seconds: Seconds }[]): string[] {
  const times = new Map<Terrain, Seconds>()
  for (const { block, seconds } of blocks) times.set(block.terrain, (times.get(block.terrain) ?? 0) + seconds)
  return TERRAINS.filter((terrain) => TERRAIN_WORDS[terrain] !== '' && (times.get(terrain) ?? 0) > 0)
    .sort((a, b) => times.get(b)! - times.get(a)!)
    .slice(0, 3)
    .map((terrain) => TERRAIN_WORDS[terrain])
}

/** "The knob is your brake, sit whenever you like, and the last five minutes are easy." */
function howToRide({ report }: Plan): string {
  const stands = report.blocks.some(({ block }) => block.posture === 'standing' || block.posture === 'hovering')
  const easy = Math.floor(report.totals.tailSeconds / 60)
  const parts = [
    'the knob is your brake',
    ...(stands ? [allSeated(report.blocks) ? 'every stand has a seated option' : 'sit whenever you like'] : []),
    ...(easy >= 1 ? [easy === 1 ? 'the last minute is easy' : `the last ${numberWords(easy)} minutes are easy`] : []),
  ]
  const said = joinWords(parts)
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`
}

function allSeated(blocks: readonly PlayedBlock[]): boolean {
  return blocks.every(
    ({ block }) => (block.posture !== 'standing' && block.posture !== 'hovering') || /seat|sit|saddle/i.test(block.easier?.text ?? ''),
  )
}
