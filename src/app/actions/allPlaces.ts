import type { ActionPlace } from '#actions/action.ts'
import { BACKUP } from '#features/backup/actions/saveBackup.ts'
import { DRAFT_PLACES } from '#features/drafting/actions/draftPlaces.ts'
import { RECEIVED } from '#features/handover/actions/received.ts'
import { FILE, LINK } from '#features/handover/actions/send.ts'
import { LEAD_PLACES } from '#features/leading/actions/leadPlaces.ts'
import { LOG } from '#features/log/actions/logClass.ts'
import { PHONE_SCREENS, SHEET } from '#features/sheet/actions/sheetPlaces.ts'
import { SHELF } from '#features/songs/actions/addSong.ts'
import { EVERYWHERE, FIELDS } from './everywhere.ts'
import { FINDING } from './find.ts'

/** Every action there is, by place. */
export const ALL_PLACES: readonly ActionPlace<never>[] = [
  FINDING,
  EVERYWHERE,
  RECEIVED,
  ...DRAFT_PLACES,
  ...LEAD_PLACES,
  SHEET,
  PHONE_SCREENS,
  LINK,
  FILE,
  SHELF,
  LOG,
  BACKUP,
  FIELDS,
]
