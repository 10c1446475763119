import type { RuleName } from '#engine/findings/ruleNames.ts'
import { words } from '#words/words.ts'

/** Rules that can only speak once. */
type SpeaksOnce =
  | 'briefing'
  | 'closingWords'
  | 'coolDown'
  | 'difficultyForLevel'
  | 'endsHeavy'
  | 'endsOffPedals'
  | 'hearing'
  | 'holdBalance'
  | 'leadOpen'
  | 'leadUnset'
  | 'leaderWithoutBlock'
  | 'newcomers'
  | 'noBlocks'
  | 'noSections'
  | 'nothingRidden'
  | 'openingCard'
  | 'sideBalance'
  | 'slotOverrun'
  | 'slotUnused'
  | 'stretchSides'
  | 'warmUp'
  | 'water'
  | 'workShare'

/** What findings of one rule are called together; undefined where each has to speak for itself. */
export function kindWords(rule: RuleName): string | undefined {
  const kinds: Readonly<Record<Exclude<RuleName, SpeaksOnce>, string>> = words.checkKinds
  return (kinds as Readonly<Partial<Record<RuleName, string>>>)[rule]
}
