import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { say } from '#words/said.ts'

export const FIT_SECTION: DraftAction = {
  id: 'stage.fitSection',
  name: say('actions.fitSong'),
  does: say('actions.fitSong'),
  keys: ['F'],
  keyOnly: true,
  can: (on) => sectionIdOf(on) !== null,
  inMenu: true,
  do: (on) => {
    const id = sectionIdOf(on)
    if (id !== null) on.tools.fitSection(id)
  },
}

export const FIT_RIDE: DraftAction = {
  id: 'stage.fitRide',
  name: say('actions.fitRide'),
  does: say('actions.fitRideDo'),
  keys: ['0'],
  inMenu: true,
  do: ({ tools }) => tools.fitRide(),
}

const sectionIdOf = ({ store, target }: DraftGround): string | null =>
  target.kind === 'section' ? target.id : store.getState().selection.sectionId
