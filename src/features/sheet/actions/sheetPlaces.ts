import type { ActionPlace, Ground } from '#actions/action.ts'
import { SCAN_KEYS } from '#features/sheet/phone/scanKeys.ts'
import { say } from '#words/said.ts'
import { PRINT } from './print.ts'
import { type ScanGround, SHOW_ON_SCREEN } from './showOnScreen.ts'

const onPage = { reach: 'page', repeats: false } as const

/** The sheets of a ride. */
export const SHEET: ActionPlace<Ground> = {
  id: 'sheet',
  ...onPage,
  groups: [{ title: say('actions.group', { group: 'sheet' }), actions: [PRINT] }],
}

/** The sheet for a phone, which is read without paper. */
export const PHONE_SCREENS: ActionPlace<ScanGround> = {
  id: 'phoneScreens',
  ...onPage,
  groups: [{ title: say('actions.group', { group: 'sheetOnScreen' }), actions: [SHOW_ON_SCREEN], also: SCAN_KEYS }],
}
