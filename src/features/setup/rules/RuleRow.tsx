import type { ConstantSpec } from '#engine/constants.ts'
import { Button } from '#ui/Button.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { formatNumber } from '#units/formatNumber.ts'
import { parseRule } from './houseRules.ts'

interface Props {
  spec: ConstantSpec
  value: number
  /** Takes the value, or says why not. */
  onCommit: (value: number) => string | null
}

/** One number of the room: its default and source beside it, and the way back. */
export function RuleRow({ spec, value, onCommit }: Props) {
  const own = value !== spec.default
  return (
    <div className="rules-row" data-own={own}>
      <NumberField
        label={spec.label}
        unit={spec.unit}
        value={value}
        format={(held) => formatNumber(held, 3)}
        parse={(text) => parseRule(text, spec)}
        onCommit={onCommit}
      />
      <p className="rules-source">
        {own && (
          <>
            <Button tone="quiet" aria-label={`reset ${spec.label}`} onClick={() => onCommit(spec.default)}>
              back to {formatNumber(spec.default, 3)}
            </Button>{' '}
          </>
        )}
        {!own && `${formatNumber(spec.default, 3)} · `}
        {spec.source}
      </p>
    </div>
  )
}
