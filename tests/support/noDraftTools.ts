import type { DraftTools } from '#features/drafting/actions/draftGround.ts'

const nothing = () => {}

/** What the draft place can do besides changing the ride, where there is no place: a test puts its own over those it looks at. */
export const NO_DRAFT_TOOLS: DraftTools = {
  focus: nothing,
  reveal: nothing,
  openDetails: nothing,
  openCues: nothing,
  goToRegion: nothing,
  fitRide: nothing,
  fitSection: nothing,
  zoomBy: nothing,
  makeOffer: nothing,
  offer: null,
  keepPattern: nothing,
  typeLine: nothing,
  rename: nothing,
  writeCue: nothing,
  note: nothing,
  openMenu: nothing,
}
