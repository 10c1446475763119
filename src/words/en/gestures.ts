import { effortRange, plural } from '#words/forms.ts'
import { panelsBlock } from './panelsBlock.ts'

/** What hands do to the stage: edges, the curve, frames, and the window of the small chart. */

const PARTS = { from: 'effort on the chart, start', level: 'effort on the chart', to: 'effort on the chart, end' }
const PART_TITLES = {
  from: 'drag up or down: effort at the start',
  level: 'drag up or down: effort of the whole block',
  to: 'drag up or down: effort at the end',
}
const EDGES = {
  start: 'drag to start earlier or later by eights; hold Alt for single counts',
  end: 'drag to lengthen or shorten by eights; hold Alt for single counts',
}
const WINDOW = { from: 'start of the view', to: 'end of the view' }

export const gestures = {
  // The curve.
  curve: ({ part }: { part: keyof typeof PARTS }) => PARTS[part],
  curveTitle: ({ part }: { part: keyof typeof PART_TITLES }) => PART_TITLES[part],
  curveSays: ({ part, effort }: { part: keyof typeof PARTS; effort: { from: number; to: number } }) =>
    part === 'level' && effort.from !== effort.to
      ? effortRange(effort)
      : panelsBlock.effortSays({ level: part === 'to' ? effort.to : effort.from }),

  // Edges of blocks, and where a block starts by key.
  edge: ({ side }: { side: keyof typeof EDGES }) => EDGES[side],
  earlier: 'start earlier',
  later: 'start later',
  startDo: 'start earlier, later by an eight (5 s without music); the block before gives or takes it',
  littleEarlier: 'start a little earlier',
  littleLater: 'start a little later',
  startFineDo: 'start earlier, later by a count (1 s without music)',
  noneToTakeFrom: 'There is no block right before it to share the time with.',

  // Frames and moving about.
  framed: ({ count }: { count: number }) => (count === 0 ? 'nothing selected' : `${plural(count, 'item', 'items')} selected`),
  fineDo: 'drag an edge by single counts, the curve by tenths',
  frameDo: 'frame blocks to select them',
  panDo: 'move the view',
  overviewEdge: ({ edge }: { edge: keyof typeof WINDOW }) => WINDOW[edge],
  overviewEdgeTitle: 'drag to zoom',
  overviewEdgeKeys: 'on an edge of the view in the small chart: zoom',
}
