import type { PlayedBlock } from '#engine/played.ts'
import { bySpeech } from '#engine/speech/bySpeech.ts'
import type { Speech } from '#engine/speech/speech.ts'
import { remembered } from './remembered.ts'
import { tokensOf } from './tokens.ts'

/** A name's words, and the number it counts by, if it ends in one: "seated hill 3". */
interface NumberedName {
  words: readonly string[]
  number?: number
  /** The word the number belongs to, or the one that says most: the last. */
  kind?: string
}

/** What a block's label counts as. */
const numberedName = bySpeech((speech) => remembered((label) => readName(label, speech)))

function readName(label: string, { names: { joints, kind: kindOf } }: Speech): NumberedName {
  const tokens = tokensOf(label).map(({ word }) => word)
  const at = tokens.findIndex((word, i) => /^\d+$/.test(word) && i > 0 && !joints.has(tokens[i - 1]!))
  const words = tokens.filter((word) => /\p{L}/u.test(word) && !joints.has(word)).map(kindOf)
  const kind = at > 0 ? kindOf(tokens[at - 1]!) : words.at(-1)
  return { words, ...(at > 0 && { number: Number(tokens[at]) }), ...(kind !== undefined && { kind }) }
}

export const nameOf = ({ block }: PlayedBlock, speech: Speech): NumberedName => numberedName(speech)(block.label ?? block.terrain)

/** One of a kind as people count them: neighbouring blocks of one number, or of none, are one. */
export interface Member {
  from: number
  to: number
  number?: number
}

/** All of a kind, and how many stand before and after each place among them (one more of these than members). */
export interface Members {
  members: readonly Member[]
  total: number
  before: readonly number[]
  after: readonly number[]
}

/** The members of a kind among blocks of one section, counted from every place. Linear in the blocks. */
export function countedMembers(kind: string, blocks: readonly PlayedBlock[], speech: Speech): Members {
  const members = membersOf(kind, blocks, speech)
  const before = running(members)
  return { members, total: before.at(-1)!, before, after: running(members.toReversed()).reverse() }
}

/** How many there are among the first none, the first one, the first two … */
function running(members: readonly Member[]): number[] {
  const numbers = new Set<number>()
  let unnumbered = false
  const counts = members.map(({ number }, place) => {
    if (number === undefined) unnumbered = true
    else numbers.add(number)
    return unnumbered ? place + 1 : numbers.size
  })
  return [0, ...counts]
}

/** The members of a kind ("push", "hill") among blocks of one section, in order. */
export function membersOf(kind: string, blocks: readonly PlayedBlock[], speech: Speech): Member[] {
  const members: Member[] = []
  for (const played of blocks) {
    const { words, number } = nameOf(played, speech)
    if (!words.includes(kind)) continue
    const last = members.at(-1)
    const joins = last !== undefined && last.to === played.index - 1 && last.number === number && played.set?.part !== 1
    if (joins) last.to = played.index
    else members.push({ from: played.index, to: played.index, ...(number !== undefined && { number }) })
  }
  return members
}

/** How many of a kind stand among members: by their numbers where they have any, so that a step done twice counts once. */
export function countMembers(members: readonly Member[]): number {
  const numbers = new Set(members.map(({ number }) => number))
  return numbers.has(undefined) ? members.length : numbers.size
}
