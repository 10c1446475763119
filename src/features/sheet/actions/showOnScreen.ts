import type { Action, Ground } from '#actions/action.ts'

export interface ScanGround extends Ground {
  open: () => void
}

export const SHOW_ON_SCREEN: Action<ScanGround> = {
  id: 'sheet.scan',
  name: 'show on this screen',
  does: 'one screen at a time over the whole display',
  do: ({ open }) => open(),
}
