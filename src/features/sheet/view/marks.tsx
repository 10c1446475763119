import type { LegendMark } from '#features/sheet/contents/contents.ts'
import type { Foot, Hands, Posture } from '#plan/model.ts'
import { Figure } from '#ui/figures/Figure.tsx'
import { words } from '#words/words.ts'
import { EffortBar } from './EffortBar.tsx'

const SIZE = '1em'

export const PostureMark = ({ posture }: { posture: Posture }) => (
  <Figure name={posture} size={SIZE} label={words.names.posture({ posture })} className="sheet-mark" />
)

export const HandsMark = ({ hands }: { hands: Hands }) => (
  <Figure name={hands} size={SIZE} label={words.printed.hands({ hands })} className="sheet-mark sheet-mark-hands" />
)

/** The figure and its letter: in the dark the letter is surer. */
export const FootMark = ({ foot }: { foot: Foot }) => (
  <span className="sheet-foot">
    <Figure name={foot} size={SIZE} label={words.printed.foot({ foot })} className="sheet-mark" />
    <b aria-hidden="true">{words.printed.footLetter({ foot })}</b>
  </span>
)

/** A mark of the legend, as it stands on the sheet. */
export function LegendMarkView({ mark }: { mark: LegendMark }) {
  switch (mark.kind) {
    case 'posture':
      return <PostureMark posture={mark.posture} />
    case 'hands':
      return <HandsMark hands={mark.hands} />
    case 'foot':
      return <FootMark foot={mark.foot} />
    case 'water':
      return <Figure name="water" size={SIZE} className="sheet-mark" />
    case 'effort':
      return (
        <span className="sheet-legend-bar">
          <EffortBar effort={{ from: 7, to: 7 }} />
        </span>
      )
    case 'word':
      return (
        <b>
          <bdi>{mark.word}</bdi>
        </b>
      )
  }
}
