import type { Action, Ground } from '#actions/action.ts'
import { say } from '#words/said.ts'

export const PRINT: Action<Ground> = {
  id: 'sheet.print',
  name: say('actions.print'),
  does: say('actions.printDo'),
  do: () => window.print(),
}
