import type { Deck } from './deck.ts'
import type { Passage } from './passage.ts'
import { FEELS } from './phrases/talk.ts'
import { suits } from './suits.ts'

/** What the resistance of a block should feel like once it is found: of the words that fit its load one that was said least. */
export function feelOf(passage: Passage, deck: Deck): string | undefined {
  const [feel] = deck.order(FEELS[passage.kind].filter((text) => suits(text, passage)))
  if (feel !== undefined) deck.use(feel)
  return feel
}
