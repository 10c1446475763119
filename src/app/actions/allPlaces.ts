import type { ActionPlace } from '#actions/action.ts'
import { DRAFT_PLACES } from '#features/drafting/actions/draftPlaces.ts'
import { RECEIVED } from '#features/handover/actions/received.ts'
import { FILE, LINK } from '#features/handover/actions/send.ts'
import { LEAD_PLACES } from '#features/leading/actions/leadPlaces.ts'
import { SHEET } from '#features/sheet/actions/sheetPlaces.ts'
import { EVERYWHERE, FIELDS } from './everywhere.ts'

/** Every action there is, by place. */
export const ALL_PLACES: readonly ActionPlace<never>[] = [EVERYWHERE, RECEIVED, ...DRAFT_PLACES, ...LEAD_PLACES, SHEET, LINK, FILE, FIELDS]
