import { canRoughIn } from '#engine/roughIn/roughIn.ts'
import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'

const hasSections = ({ store }: DraftGround): boolean => (store.getState().shown?.sections.length ?? 0) > 0

export const ROUGH_IN: DraftAction = {
  id: 'offer.roughIn',
  name: 'rough in',
  does: 'a first draft of the songs nothing is planned for',
  writes: true,
  can: ({ store }) => {
    const { ride } = store.getState()
    return ride !== null && canRoughIn(ride)
  },
  pressed: ({ tools }) => tools.offer === 'draft',
  do: ({ tools }) => {
    tools.fitRide()
    tools.makeOffer('draft')
  },
}

export const FIT_SLOT: DraftAction = {
  id: 'offer.fitSlot',
  name: 'fit to the slot',
  does: 'what to shorten, lengthen or leave out to end on time',
  writes: true,
  can: hasSections,
  pressed: ({ tools }) => tools.offer === 'slot',
  do: ({ tools }) => tools.makeOffer('slot'),
}

export const OTHER_LENGTH: DraftAction = {
  id: 'offer.otherLength',
  name: 'shorter or longer version',
  does: 'the same ride for a class of another length',
  writes: true,
  can: hasSections,
  pressed: ({ tools }) => tools.offer === 'length',
  do: ({ tools }) => {
    tools.fitRide()
    tools.makeOffer('length')
  },
}
