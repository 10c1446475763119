import type { ActionPlace, Ground } from '#actions/action.ts'
import { SCAN_KEYS } from '#features/sheet/phone/scanKeys.ts'
import { PRINT } from './print.ts'

/** The sheets of a ride. */
export const SHEET: ActionPlace<Ground> = {
  id: 'sheet',
  reach: 'page',
  repeats: false,
  groups: [{ title: 'a sheet on this screen', actions: [PRINT], also: SCAN_KEYS }],
}
