import { memo } from 'react'
import { ActionButton } from '#actions/ActionButton.tsx'
import { inSpokenOrder } from '#engine/cues/spokenOrder.ts'
import { WRITE_CUE } from '#features/drafting/actions/changing/writeCue.ts'
import { useSelectedGround } from '#features/drafting/actions/draftGround.ts'
import { CueFields } from '#features/drafting/panel/block/CueFields.tsx'
import { CueOffers } from '#features/drafting/panel/block/CueOffers.tsx'
import { useSettledOrder } from '#features/drafting/panel/block/useSettledOrder.ts'
import { WordsField } from '#features/drafting/panel/rows/WordsField.tsx'
import type { Cue, CueMoment } from '#plan/model.ts'
import { useApp } from '#store/useApp.ts'
import { words } from '#words/words.ts'
import './cues.css'

interface CueListProps {
  blockId: string
  cues: readonly Cue[]
  unit: 'counts' | 'seconds'
  onChange: (cues: Cue[]) => void
  /** Adds words that have no moment yet. */
  onAdd: (text: string) => void
  /** A cue at another moment, where that moment usually stands. */
  atMoment: (cue: Cue, moment: CueMoment) => Cue
  /** The lead of a cue inside the block that begins with it. */
  beginsAt: (cueId: string) => number | undefined
  onCopy: (cueId: string) => void
}

/** What is said at a block, in the order it is said. Words typed into the last line become another cue, said as the block begins. */
export const CueList = memo(function CueList({ blockId, cues, unit, onChange, onAdd, atMoment, beginsAt, onCopy }: CueListProps) {
  const on = useSelectedGround()
  const spoken = useApp((state) => idsOf(inSpokenOrder(cues, state.shownReport?.cues.lines ?? [])))
  const { ids, ...settled } = useSettledOrder(spoken === '' ? [] : spoken.split(' '))
  const add = (typed: string) => {
    const text = typed.trim()
    if (text !== '') onAdd(text)
    return null
  }
  return (
    <section className="panel-group" aria-label={words.panelsBlock.cues}>
      <div className="panel-cues-head">
        <h3>{words.panelsBlock.cues}</h3>
        <ActionButton action={WRITE_CUE} on={on} tone="quiet" className="panel-edit-only" />
      </div>
      <ol className="panel-cues" {...settled}>
        {ids.map((id, place) => {
          const index = cues.findIndex((cue) => cue.id === id)
          return (
            <CueFields
              key={id}
              cue={cues[index]!}
              place={place + 1}
              unit={unit}
              onChange={(next) => onChange(cues.with(index, next))}
              onRemove={() => onChange(cues.toSpliced(index, 1))}
              onCopy={onCopy}
              atMoment={atMoment}
              beginsAt={beginsAt}
            />
          )
        })}
      </ol>
      <WordsField
        className="panel-edit-only"
        label={words.panelsBlock.addCue}
        hideLabel
        value=""
        placeholder={cues.length === 0 ? words.panelsBlock.whatYouSayFirst : words.panelsBlock.whatYouSayNext}
        onCommit={add}
      />
      <CueOffers blockId={blockId} />
    </section>
  )
})

/** Ids hold no spaces, so one text tells whether their order changed. */
const idsOf = (cues: readonly Cue[]): string => cues.map(({ id }) => id).join(' ')
