import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'

export const FIT_SECTION: DraftAction = {
  id: 'stage.fitSection',
  name: 'fit the song to the stage',
  does: 'fit the song to the stage',
  keys: ['F'],
  keyOnly: true,
  can: (on) => sectionIdOf(on) !== null,
  do: (on) => {
    const id = sectionIdOf(on)
    if (id !== null) on.tools.fitSection(id)
  },
}

export const FIT_RIDE: DraftAction = {
  id: 'stage.fitRide',
  name: 'whole ride',
  does: 'fit the whole ride',
  keys: ['0'],
  do: ({ tools }) => tools.fitRide(),
}

const sectionIdOf = ({ store, target }: DraftGround): string | null =>
  target.kind === 'section' ? target.id : store.getState().selection.sectionId
