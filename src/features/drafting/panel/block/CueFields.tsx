import { memo } from 'react'
import { CueFindings } from '#features/drafting/panel/block/CueFindings.tsx'
import { formatCueLead, parseCueLead, stepCueLead } from '#features/drafting/panel/block/cueLead.ts'
import { SpeechNote } from '#features/drafting/panel/block/SpeechNote.tsx'
import { momentChoices } from '#features/drafting/panel/choices.ts'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { WordsField } from '#features/drafting/panel/rows/WordsField.tsx'
import { isInside, startsWithBlock } from '#plan/cueStart.ts'
import type { Cue, CueMoment } from '#plan/model.ts'
import { IconButton } from '#ui/IconButton.tsx'
import { type Choice, Select } from '#ui/Select.tsx'
import { words } from '#words/words.ts'

interface CueFieldsProps {
  cue: Cue
  /** Place among the block's cues as they are spoken, from 1. */
  place: number
  /** What a bare number of the lead is. */
  unit: 'counts' | 'seconds'
  onChange: (cue: Cue) => void
  onRemove: () => void
  onCopy: (cueId: string) => void
  atMoment: (cue: Cue, moment: CueMoment) => Cue
  beginsAt: (cueId: string) => number | undefined
}

const countIns = (): readonly Choice<'4' | '8'>[] => [
  { value: '4', label: words.panelsBlock.countIn({ counts: 4 }) },
  { value: '8', label: words.panelsBlock.countIn({ counts: 8 }) },
]

/** Most characters of one cue: far more than can be said before a change. */
const LONGEST = 500

/** One thing the leader says: which moment, how long before the change it ends, the words, and a count-in. */
export const CueFields = memo(function CueFields({ cue, place, unit, onChange, onRemove, onCopy, atMoment, beginsAt }: CueFieldsProps) {
  const setText = (typed: string) => {
    const text = typed.trim()
    if (text.length > LONGEST) return words.fields.tooLong({ most: LONGEST, length: text.length })
    if (text !== cue.text.trim()) onChange({ ...cue, text })
    return null
  }
  return (
    <li className="panel-cue" data-cue-id={cue.id}>
      <div className="panel-cue-when">
        <Select
          label={words.panelsBlock.cueMoment({ place })}
          hideLabel
          value={cue.moment}
          choices={momentChoices()}
          onChange={(moment) => onChange(atMoment(cue, moment))}
        />
        <QuantityRow
          label={words.panelsBlock.cueLead({ place })}
          hideLabel
          value={cue.lead}
          unit={startsWithBlock(cue.lead) ? '' : isInside(cue) ? words.panelsBlock.beforeEnd : words.panelsBlock.before}
          format={formatCueLead}
          parse={(text) => parseCueLead(text, unit, isInside(cue))}
          onChange={(lead) => onChange({ ...cue, lead })}
          step={(lead, direction, large) => stepCueLead(lead, direction, large, beginsAt(cue.id))}
        />
        {(cue.moment === 'countIn' || cue.count !== undefined) && (
          <Select
            label={words.panelsBlock.cueCountIn({ place })}
            hideLabel
            value={`${cue.count ?? 4}`}
            choices={countIns()}
            onChange={(count) => onChange({ ...cue, count: count === '4' ? 4 : 8 })}
          />
        )}
        <span className="panel-cue-tools">
          <IconButton tone="quiet" label={words.clipboard.copyCue({ place })} onClick={() => onCopy(cue.id)}>
            <CopySign />
          </IconButton>
          <IconButton tone="quiet" label={words.panelsBlock.removeCue({ place })} onClick={onRemove}>
            ×
          </IconButton>
        </span>
      </div>
      <WordsField
        label={words.panelsBlock.cueWords({ place })}
        hideLabel
        value={cue.text}
        placeholder={cue.moment === 'countIn' ? words.panelsBlock.countedIn : words.panelsBlock.whatYouSay}
        onCommit={setText}
      />
      <SpeechNote cueId={cue.id} />
      <CueFindings cueId={cue.id} />
    </li>
  )
})

/** Two sheets, one behind the other. */
function CopySign() {
  return (
    <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" fill="none" stroke="currentColor" strokeWidth="1.3">
      <rect x="4.5" y="4.5" width="8" height="8" rx="1" />
      <path d="M2.5 9.5h-1v-8h8v1" strokeLinejoin="round" />
    </svg>
  )
}
