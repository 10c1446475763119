import { memo } from 'react'
import { CueFields } from '#features/drafting/panel/block/CueFields.tsx'
import { CueOffers } from '#features/drafting/panel/block/CueOffers.tsx'
import { WordsField } from '#features/drafting/panel/rows/WordsField.tsx'
import type { Cue } from '#plan/model.ts'
import './cues.css'

interface CueListProps {
  blockId: string
  cues: readonly Cue[]
  unit: 'counts' | 'seconds'
  newId: () => string
  onChange: (cues: Cue[]) => void
}

/** What is said at a block, in order. Words typed into the last line become another cue. */
export const CueList = memo(function CueList({ blockId, cues, unit, newId, onChange }: CueListProps) {
  const add = (typed: string) => {
    const text = typed.trim()
    if (text === '') return null
    onChange([...cues, { id: newId(), ...firstMoment(cues, unit), text }])
    return null
  }
  return (
    <section className="panel-group" aria-label="cues">
      <h3>cues</h3>
      <ol className="panel-cues">
        {cues.map((cue, index) => (
          <CueFields
            key={cue.id}
            cue={cue}
            place={index + 1}
            of={cues.length}
            unit={unit}
            onChange={(next) => onChange(cues.with(index, next))}
            onRemove={() => onChange(cues.toSpliced(index, 1))}
            onMove={(by) => onChange(cues.toSpliced(index, 1).toSpliced(index + by, 0, cue))}
          />
        ))}
      </ol>
      <CueOffers blockId={blockId} />
      <WordsField
        className="panel-edit-only"
        label="add a cue"
        hideLabel
        value=""
        placeholder={cues.length === 0 ? 'what you say' : 'what you say next'}
        onCommit={add}
      />
    </section>
  )
})

/** The first cue of a block announces it, an eight (eight seconds off the beat) ahead; what is added after it is about form. */
function firstMoment(cues: readonly Cue[], unit: 'counts' | 'seconds'): Pick<Cue, 'moment' | 'lead'> {
  const moment = cues.some((cue) => cue.moment === 'announce') ? 'form' : 'announce'
  const ahead = moment === 'announce' ? 8 : 0
  return { moment, lead: unit === 'counts' ? { counts: ahead } : { seconds: ahead } }
}
