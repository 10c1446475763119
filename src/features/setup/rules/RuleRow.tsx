import type { ConstantName, ConstantSpec } from '#engine/constants.ts'
import { isReadOnly } from '#store/placeSlice.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { Source } from '#ui/Source.tsx'
import { number } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { parseRule } from './houseRules.ts'

interface Props {
  name: ConstantName
  spec: ConstantSpec
  value: number
  /** Takes the value, or says why not. */
  onCommit: (value: number) => string | null
}

/** One number of the studio: its default and source under it, and the way back. */
export function RuleRow({ name, spec, value, onCommit }: Props) {
  // Nothing can be pressed in a ride that is only looked at: there the source stands in the open.
  const readOnly = useApp(isReadOnly)
  const source = words.rules.source({ source: spec.source })
  const own = value !== spec.default
  return (
    <div className="rules-row" data-own={own} data-rule={name}>
      <NumberField
        label={words.rules.label({ name })}
        unit={words.rules.unit({ unit: spec.unit })}
        value={value}
        format={(held) => number(held, 3)}
        parse={(text) => parseRule(text, spec)}
        onCommit={onCommit}
      />
      <p className="rules-source">
        {own ? (
          <Button tone="quiet" aria-label={words.rules.reset({ name })} onClick={() => onCommit(spec.default)}>
            {words.rules.backTo({ value: spec.default })}
          </Button>
        ) : (
          words.rules.default({ value: spec.default })
        )}{' '}
        {readOnly ? source : <Source text={source} />}
      </p>
    </div>
  )
}
