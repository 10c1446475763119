import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { CHART_LINES, type ChartLine } from '#store/viewSlice.ts'
import { say } from '#words/said.ts'

/** Draws a line over the asked effort, or takes it away. */
const showLine = (line: ChartLine): DraftAction => ({
  id: `line.${line}`,
  name: say('actions.lineOf', { line }),
  words: () => say('actions.line', { line }),
  does: say('actions.lineDo', { line }),
  pressed: ({ store }) => store.getState().lines[line],
  do: ({ store }) => store.getState().toggleLine(line),
})

/** The legend, in this order. */
export const LINES = CHART_LINES.map((line) => ({ line, action: showLine(line) }))
