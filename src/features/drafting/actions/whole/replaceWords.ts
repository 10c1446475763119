import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { say } from '#words/said.ts'

export const REPLACE_WORDS: DraftAction = {
  id: 'offer.replaceWords',
  name: say('replacing.title'),
  does: say('replacing.does'),
  keys: ['Mod+Shift+H'],
  writes: true,
  can: ({ store }) => store.getState().ride !== null,
  pressed: ({ tools }) => tools.offer === 'words',
  do: ({ tools }) => tools.makeOffer('words'),
}
