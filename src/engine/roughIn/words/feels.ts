import type { Deck } from './deck.ts'
import type { Passage } from './passage.ts'
import { suits } from './suits.ts'
import type { Voice } from './voice.ts'

/** What the resistance of a block should feel like once it is found: of the words that fit its load one that was said least. */
export function feelOf(passage: Passage, deck: Deck, voice: Voice): string | undefined {
  const [feel] = deck.order(voice.phrases.feels[passage.kind].filter((text) => suits(text, passage, voice)))
  if (feel !== undefined) deck.use(feel)
  return feel
}
