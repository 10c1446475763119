import type { Token } from '#engine/cues/tokens.ts'
import { numberAt } from './numberAt.ts'
import { singular } from './singular.ts'
import { MINUTE_UNITS, NO_KIND, wordSet } from './words.ts'

/** How the words around a token bear on a number in it. */
export interface Mark {
  /** True where nothing is claimed: asked, denied, offered to some, or told of another day. */
  silent: boolean
  /** True where the words look ahead, past the change they are said at. */
  ahead: boolean
  /** The kind of block that is announced in the same sentence: "pushes next". */
  kind?: string
}

/** Words that make what their whole sentence says a condition, an offer to some, or a tale of another time. */
const OF_SENTENCE = wordSet(
  `if unless otherwise ago yesterday tomorrow newcomers newcomer beginners beginner regulars regular anyone someone somebody whoever
  monday tuesday wednesday thursday friday saturday sunday mondays tuesdays wednesdays thursdays fridays saturdays sundays
  advanced optional instead imagine remember rather`,
)
/** Words that do so to their clause. */
const OF_CLAUSE = wordSet(
  `not never without nobody no don't doesn't didn't isn't aren't can't cannot won't wouldn't shouldn't couldn't haven't hasn't nor neither
  lasted wanted rode did had took told said were could used added learned learnt felt thought went began started once maybe might`,
)
const PERIODS = wordSet('week weeks month months year years time night class lesson')
const KNOWN_ONE = wordSet('last next')
const FORWARD = wordSet('next coming ahead upcoming soon')

/** Marks every token. What comes after "option" is about another version throughout. Cost: linear. */
export function scopeOf(tokens: readonly Token[]): Mark[] {
  const marks: Mark[] = tokens.map(() => ({ silent: false, ahead: false }))
  const option = tokens.findIndex(({ word }) => word === 'option' || word === 'options')
  const end = option < 0 ? tokens.length : option
  for (let at = end; at < tokens.length; at++) marks[at]!.silent = true
  let ahead = false
  for (const [from, to] of runs(tokens, 0, end, 'stops')) {
    const places = Array.from({ length: to - from }, (_, i) => from + i)
    const forward = places.filter((at) => looksAhead(tokens, at))
    ahead ||= forward.length > 0
    const kind = forward.map((at) => announcedBy(tokens, from, at)).find((noun) => noun !== undefined)
    const silent = places.some((at) => opensSentence(tokens, at))
    const asked = tokens[to - 1]!.asks ? questionIn(tokens, from, to) : to
    let then = false
    for (const [first, last] of runs(tokens, from, to, 'ends')) {
      const denied = silent || first >= asked || places.slice(first - from, last - from).some((at) => closesClause(tokens, at))
      const likened = likenedFrom(tokens, first, last)
      for (let at = first; at < last; at++) {
        marks[at] = { silent: denied || at >= likened, ahead: ahead || then, ...(kind !== undefined && { kind }) }
        then ||= tokens[at]!.word === 'then' || tokens[at]!.word === 'after'
      }
    }
  }
  return marks
}

/** Where a clause tells what something is like: "surge like you've got five seconds to catch a bus"; its end where it does not. */
function likenedFrom(tokens: readonly Token[], first: number, last: number): number {
  for (let at = first; at < last - 1; at++) {
    const after = tokens[at + 1]!.word
    const like =
      tokens[at]!.word === 'like' &&
      !/^(?:feel|feels|feeling|look|looks|looking|sounds|seems|would|i'd|we'd)$/.test(tokens[at - 1]?.word ?? '')
    if (like && /^(?:you|you've|you're|you'd|it's|there's|there|we're|we've|he's|she's|they|they're|nobody|somebody|someone)$/.test(after))
      return at
    if (tokens[at]!.word === 'as' && (after === 'if' || after === 'though')) return at
  }
  return last
}

/** The stretches of tokens that end where a sentence or a clause does, as half-open ranges. */
function runs(tokens: readonly Token[], from: number, to: number, border: 'stops' | 'ends'): [number, number][] {
  const found: [number, number][] = []
  for (let start = from, at = from; at < to; at++) {
    if (!tokens[at]![border] && at < to - 1 && !(border === 'ends' && startsAnew(tokens, at + 1))) continue
    found.push([start, at + 1])
    start = at + 1
  }
  return found
}

/** Words a new thought begins with, whether or not a comma stands before it. */
const ANEW = wordSet('yes yeah yep okay ok because cause cuz but')
const ASKING = wordSet("is are am do does did can could will would shall should have has isn't aren't don't can't won't ain't")
const ASKED = wordSet("we you that it this i y'all they everybody everyone anybody anyone he she there")
const QUESTION_WORDS = wordSet("who who's what what's how how's when where why which whose want wanna ready remember got feel")

/** True where a clause begins at a token without a sign of it: "two turns on yes I said two", "two minutes straight are we ready". */
function startsAnew(tokens: readonly Token[], at: number): boolean {
  const { word, ends } = tokens[at]!
  return (
    ANEW.has(word) || (word === 'so' && !ends && ASKED.has(tokens[at + 1]?.word ?? '')) || (isAsking(tokens, at) && !hasSubject(tokens, at))
  )
}

/** "are we", "is that", "can you". */
const isAsking = (tokens: readonly Token[], at: number): boolean =>
  ASKING.has(tokens[at]!.word) && !tokens[at]!.ends && ASKED.has(tokens[at + 1]?.word ?? '')

/** "what are we", "here is that": the words belong to what stands before them. */
const hasSubject = (tokens: readonly Token[], at: number): boolean =>
  /^(?:who|what|how|when|where|why|which|that|this|it|there|here|all|and|or|if|so|then|than|as|we|you|i|they)$/.test(
    tokens[at - 1]?.word ?? '',
  )

/**
 * Where the question of a sentence begins. What stands before a tag is told and not asked: "sixteen beats, is that so bad?",
 * "half a turn on, okay?"; but all that follows a question is part of it: "can you give me half a turn, team?"
 */
function questionIn(tokens: readonly Token[], from: number, to: number): number {
  const clauses = runs(tokens, from, to, 'ends')
  const doubted = tokens.slice(from, to).some(({ word }) => word === 'maybe' || word === 'perhaps' || word === 'or')
  if (doubted) return from
  const opening = clauses.find(([first]) => isAsking(tokens, first) || QUESTION_WORDS.has(tokens[first]!.word))
  return (opening ?? clauses.at(-1)!)[0]
}

/** The noun right before "next" or "coming". */
function announcedBy(tokens: readonly Token[], from: number, at: number): string | undefined {
  const before = at > from && !tokens[at - 1]!.ends ? tokens[at - 1]!.word : ''
  return /^\p{L}{3,}$/u.test(before) && !NO_KIND.has(before) ? singular(before) : undefined
}

/** "pushes next", "coming up"; not "the next thirty seconds" nor "next to last". */
function looksAhead(tokens: readonly Token[], at: number): boolean {
  const { word, ends } = tokens[at]!
  if (!FORWARD.has(word) || isPeriod(tokens, at)) return false
  // "Who's coming with me?"
  if (word === 'coming' && /^(?:who's|who|you're)$/.test(tokens[at - 1]?.word ?? '')) return false
  const follows = tokens[at + 1]?.word ?? ''
  return word !== 'next' || ends || !(follows === 'to' || MINUTE_UNITS.has(follows) || numberAt(tokens, at + 1) !== null)
}

function opensSentence(tokens: readonly Token[], at: number): boolean {
  const { word } = tokens[at]!
  const next = tokens[at]!.ends ? '' : (tokens[at + 1]?.word ?? '')
  if (word === 'if') return !hasIt(tokens, at) && tokens[at - 1]?.word !== 'even'
  if (word === 'or') return !isEither(tokens, at) && !/^(?:more|less|so|better)$/.test(next)
  if (word === 'some' || word === 'those' || word === 'most') return next === 'of' || next === 'who'
  if (word === 'new' || word === 'strong' || word === 'stronger' || word === 'experienced') return next === 'riders' || next === 'here'
  // "Thank you for twenty minutes of work."
  if (word === 'thanks') return next === 'for'
  if (word === 'thank') return next === 'you' && tokens[at + 2]?.word === 'for'
  if (word === 'first') return next === 'timers' || next === 'timer'
  return OF_SENTENCE.has(word) || isPeriod(tokens, at)
}

/** "Either up or down." */
const isEither = (tokens: readonly Token[], at: number): boolean =>
  tokens.slice(Math.max(0, at - 3), at).some(({ word }) => word === 'either')

const AFTER_ONCE = wordSet(
  "we we're we've you you're you've it it's this that that's the your our i everybody everyone they more again every",
)

/** A word that denies what its clause says, or tells it of another time; "that was one of three" tells it of now. */
function closesClause(tokens: readonly Token[], at: number): boolean {
  const { word } = tokens[at]!
  // "A six here, even if you could do more."
  if (word === 'if') return tokens[at - 1]?.word === 'even'
  // "You just did two": of now.
  if (
    word === 'did' &&
    /^(?:you|we|just|already|y'all)$/.test(tokens[at - 1]?.word ?? '') &&
    !tokens[at]!.ends &&
    isCounted(tokens, at + 1)
  )
    return false
  // "Half a turn added."
  if (word === 'added' && /^(?:turns?|half|quarters?)$/.test(tokens[at - 1]?.word ?? '')) return false
  if (word === 'rode' && tokens[at - 1]?.word === 'just') return false
  if (word === 'went' && tokens[at + 1]?.word === 'through') return false
  if (word === 'told' && tokens[at - 1]?.word === 'all') return false
  if (word === 'was') return tokens[at - 1]?.word !== 'that'
  // "Once this kicks in" is of now, "we did it once" is not.
  if (word === 'once') return tokens[at]!.ends || !AFTER_ONCE.has(tokens[at + 1]?.word ?? '')
  return OF_CLAUSE.has(word) && !isBound(tokens, at)
}

/** "two", "all three". */
const isCounted = (tokens: readonly Token[], at: number): boolean => numberAt(tokens, tokens[at]?.word === 'all' ? at + 1 : at) !== null

/** "last week", "next time": another day. */
const isPeriod = (tokens: readonly Token[], at: number): boolean =>
  KNOWN_ONE.has(tokens[at]!.word) && !tokens[at]!.ends && PERIODS.has(tokens[at + 1]?.word ?? '')

/** "if you have it", "if you've got it": a call as it is meant. */
const hasIt = (tokens: readonly Token[], at: number): boolean =>
  /^(?:you have it|you got it|you've got it|it's there|you can)\b/.test(
    tokens
      .slice(at + 1, at + 4)
      .map(({ word }) => word)
      .join(' '),
  )

/** "no more than", "not less than": a limit and no denial. "No," by itself denies nothing that follows. */
const isBound = (tokens: readonly Token[], at: number): boolean =>
  (tokens[at]!.ends && tokens[at]!.word === 'no') || (/^(?:more|less)$/.test(tokens[at + 1]?.word ?? '') && tokens[at + 2]?.word === 'than')
