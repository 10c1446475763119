import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import { CHART_LINES, type ChartLine } from '#store/viewSlice.ts'

const SAYS: Record<ChartLine, string> = {
  demand: 'the effort that resistance, cadence and posture ask of this rider: an estimate, in a band that holds nine of ten such riders',
  heart: 'predicted heart rate as a share of the reserve: an estimate for a modelled rider, not a measurement, in a band for nine of ten',
  reserve: 'what is left of the work capacity above threshold: an estimate, in a band that holds three published recoveries',
  strain: 'the asked effort, smoothed: how the class builds, not a heart rate',
}

/** Draws a line over the asked effort, or takes it away. */
const showLine = (line: ChartLine): DraftAction => ({
  id: `line.${line}`,
  name: `line of ${line}`,
  words: () => line,
  does: SAYS[line],
  pressed: ({ store }) => store.getState().lines[line],
  do: ({ store }) => store.getState().toggleLine(line),
})

/** The legend, in this order. */
export const LINES = CHART_LINES.map((line) => ({ line, action: showLine(line) }))
