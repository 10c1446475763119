import type { Action, Ground } from '#actions/action.ts'
import { say } from '#words/said.ts'

export interface ScanGround extends Ground {
  open: () => void
}

export const SHOW_ON_SCREEN: Action<ScanGround> = {
  id: 'sheet.scan',
  name: say('actions.showOnScreen'),
  does: say('actions.showOnScreenDo'),
  do: ({ open }) => open(),
}
