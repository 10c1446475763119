import { memo } from 'react'
import { parseRate } from '#features/drafting/panel/ride/rules.ts'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import { DEFAULT_LEADER } from '#plan/defaults.ts'
import type { Leader } from '#plan/model.ts'
import { Button } from '#ui/Button.tsx'
import { words } from '#words/words.ts'

interface LeaderFieldsProps {
  leaders: readonly Leader[]
  newId: () => string
  onChange: (leaders: Leader[]) => void
}

/** Who teaches: one, or two who share the blocks between them. */
export const LeaderFields = memo(function LeaderFields({ leaders, newId, onChange }: LeaderFieldsProps) {
  const both = leaders.length > 1
  return (
    <section className="panel-group" aria-label={words.panelsRide.instructors}>
      <h3>{both ? words.panelsRide.instructors : words.panelsRide.instructor}</h3>
      {leaders.map((leader, index) => (
        <div className="panel-rows" key={leader.id}>
          <TextRow
            label={both ? (index === 0 ? words.panelsRide.first : words.panelsRide.second) : words.panels.name}
            value={leader.name}
            required={words.panelsRide.nameNeeded}
            longest={120}
            onChange={(name) => name !== undefined && onChange(leaders.with(index, { ...leader, name }))}
          />
          <QuantityRow
            label={words.panelsRide.speaks}
            value={leader.wordsPerMinute}
            unit={words.panelsRide.wordsPerMinute}
            format={String}
            parse={parseRate}
            onChange={(wordsPerMinute) => onChange(leaders.with(index, { ...leader, wordsPerMinute }))}
            step={(rate, direction, large) => Math.min(400, Math.max(40, rate + direction * (large ? 20 : 5)))}
          />
        </div>
      ))}
      {both ? (
        <Button className="panel-edit-only" onClick={() => onChange(leaders.slice(0, 1))}>
          {words.panelsRide.teachWithout({ name: leaders[1]!.name })}
        </Button>
      ) : (
        <Button
          className="panel-edit-only"
          onClick={() => onChange([...leaders, { ...DEFAULT_LEADER, id: newId(), name: words.panelsRide.secondInstructor }])}
        >
          {words.panelsRide.addSecond}
        </Button>
      )}
      {both && <p className="panel-note panel-edit-only">{words.panelsRide.whoLeaves}</p>}
    </section>
  )
})
