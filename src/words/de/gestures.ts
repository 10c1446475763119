import type { en } from '#words/en/index.ts'
import { effortRange, plural } from '#words/forms.ts'
import { panelsBlock } from './panelsBlock.ts'

/** Was Hände mit der Bühne tun: Kanten, die Kurve, Rahmen und das Fenster der kleinen Kurve. */

const PARTS = { from: 'Belastung in der Kurve, Anfang', level: 'Belastung in der Kurve', to: 'Belastung in der Kurve, Ende' }
const PART_TITLES = {
  from: 'nach oben oder unten ziehen: Belastung am Anfang',
  level: 'nach oben oder unten ziehen: Belastung des ganzen Blocks',
  to: 'nach oben oder unten ziehen: Belastung am Ende',
}
const EDGES = {
  start: 'ziehen, um in Achtern früher oder später zu beginnen; mit Alt in einzelnen Zählzeiten',
  end: 'ziehen, um in Achtern zu verlängern oder zu kürzen; mit Alt in einzelnen Zählzeiten',
}
const WINDOW = { from: 'Anfang des Ausschnitts', to: 'Ende des Ausschnitts' }

export const gestures: typeof en.gestures = {
  curve: ({ part }) => PARTS[part],
  curveTitle: ({ part }) => PART_TITLES[part],
  curveSays: ({ part, effort }) =>
    part === 'level' && effort.from !== effort.to
      ? effortRange(effort)
      : panelsBlock.effortSays({ level: part === 'to' ? effort.to : effort.from }),

  edge: ({ side }) => EDGES[side],
  earlier: 'früher beginnen',
  later: 'später beginnen',
  startDo: 'um einen Achter früher, später beginnen (5 s ohne Musik); der Block davor gibt oder nimmt',
  littleEarlier: 'etwas früher beginnen',
  littleLater: 'etwas später beginnen',
  startFineDo: 'um eine Zählzeit früher, später beginnen (1 s ohne Musik)',
  noneToTakeFrom: 'Direkt davor steht kein Block, mit dem sich die Zeit teilen ließe.',

  framed: ({ count }) => (count === 0 ? 'nichts ausgewählt' : `${plural(count, 'Element', 'Elemente')} ausgewählt`),
  fineDo: 'eine Kante um einzelne Zählzeiten ziehen, die Kurve um Zehntel',
  frameDo: 'Blöcke mit einem Rahmen auswählen',
  panDo: 'Ausschnitt verschieben',
  overviewEdge: ({ edge }) => WINDOW[edge],
  overviewEdgeTitle: 'ziehen, um zu zoomen',
  overviewEdgeKeys: 'an einer Kante des Ausschnitts in der kleinen Kurve: zoomen',
}
