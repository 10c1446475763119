import type { Action, Ground } from '#actions/action.ts'

export const PRINT: Action<Ground> = {
  id: 'sheet.print',
  name: 'print',
  does: 'print the sheet that is shown',
  do: () => window.print(),
}
