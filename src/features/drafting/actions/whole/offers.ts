import { canRoughIn } from '#engine/roughIn/roughIn.ts'
import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { say } from '#words/said.ts'

const hasSections = ({ store }: Pick<DraftGround, 'store'>): boolean => (store.getState().shown?.sections.length ?? 0) > 0

export const ROUGH_IN: DraftAction = {
  id: 'offer.roughIn',
  name: say('actions.draft'),
  does: say('actions.draftDo'),
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

/** Another ride that begins as this one stands. */
export const NEW_FROM_THIS: DraftAction = {
  id: 'offer.newFromThis',
  name: say('ownPatterns.newFromThis'),
  does: say('ownPatterns.newFromThisDo'),
  can: ({ store }) => store.getState().received === null && hasSections({ store }),
  do: ({ store }) => {
    const { ride, askTemplate } = store.getState()
    if (ride) askTemplate(ride)
  },
}

export const FIT_SLOT: DraftAction = {
  id: 'offer.fitSlot',
  name: say('actions.fitLength'),
  does: say('actions.fitLengthDo'),
  writes: true,
  can: hasSections,
  pressed: ({ tools }) => tools.offer === 'slot',
  do: ({ tools }) => tools.makeOffer('slot'),
}

export const OTHER_LENGTH: DraftAction = {
  id: 'offer.otherLength',
  name: say('actions.otherLength'),
  does: say('actions.otherLengthDo'),
  writes: true,
  can: hasSections,
  pressed: ({ tools }) => tools.offer === 'length',
  do: ({ tools }) => {
    tools.fitRide()
    tools.makeOffer('length')
  },
}
