import { memo } from 'react'
import { parseRate } from '#features/drafting/panel/ride/rules.ts'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import { DEFAULT_LEADER } from '#plan/defaults.ts'
import type { Leader } from '#plan/model.ts'
import { Button } from '#ui/Button.tsx'

interface LeaderFieldsProps {
  leaders: readonly Leader[]
  newId: () => string
  onChange: (leaders: Leader[]) => void
}

/** Who teaches: one, or two who share the blocks between them. */
export const LeaderFields = memo(function LeaderFields({ leaders, newId, onChange }: LeaderFieldsProps) {
  const both = leaders.length > 1
  return (
    <section className="panel-group" aria-label="leaders">
      <h3>{both ? 'leaders' : 'leader'}</h3>
      {leaders.map((leader, index) => (
        <div className="panel-rows" key={leader.id}>
          <TextRow
            label={both ? (index === 0 ? 'first' : 'second') : 'name'}
            value={leader.name}
            required="A leader needs a name."
            longest={120}
            onChange={(name) => name !== undefined && onChange(leaders.with(index, { ...leader, name }))}
          />
          <QuantityRow
            label="speaks"
            value={leader.wordsPerMinute}
            unit="words a minute"
            format={String}
            parse={parseRate}
            onChange={(wordsPerMinute) => onChange(leaders.with(index, { ...leader, wordsPerMinute }))}
            step={(rate, direction, large) => Math.min(400, Math.max(40, rate + direction * (large ? 20 : 5)))}
          />
        </div>
      ))}
      {both ? (
        <Button className="panel-edit-only" onClick={() => onChange(leaders.slice(0, 1))}>
          teach without {leaders[1]!.name}
        </Button>
      ) : (
        <Button
          className="panel-edit-only"
          onClick={() => onChange([...leaders, { ...DEFAULT_LEADER, id: newId(), name: 'second leader' }])}
        >
          add a second leader
        </Button>
      )}
      {both && <p className="panel-note panel-edit-only">Blocks of a leader who goes are led by the other one.</p>}
    </section>
  )
})
