import { memo, useState } from 'react'
import { CheckRow } from '#features/drafting/panel/rows/CheckRow.tsx'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import { patched } from '#plan/edits.ts'
import type { Foot, Move } from '#plan/model.ts'
import type { Choice } from '#ui/Select.tsx'
import { type NumberRules, parseNumber } from '#units/parseNumber.ts'
import { words } from '#words/words.ts'
import { TRADE_MOVES } from './tradeMoves.ts'

interface MoveFieldsProps {
  move: Move | undefined
  onChange: (move: Move | undefined) => void
  /** Gives the move its other name wherever it is shown, so that its showings stay linked. */
  onRename: (from: string, to: string) => void
}

export const NONE = 'none'
export const OWN = 'own'
export const moveChoices = (): readonly Choice<string>[] => [
  { value: NONE, label: words.panelsBlock.none },
  ...TRADE_MOVES.map(({ name }) => ({ value: name, label: words.names.move({ name }) })),
  { value: OWN, label: words.panelsBlock.myOwn },
]

export const sideChoices = (): readonly Choice<Foot | typeof NONE>[] => [
  { value: NONE, label: words.panelsBlock.noSide },
  { value: 'left', label: words.names.foot({ foot: 'left' }) },
  { value: 'right', label: words.names.foot({ foot: 'right' }) },
]

export const MOVE_COUNTS: NumberRules = { of: 'move', min: 1, max: 64, suffixes: ['counts', 'count', 'c', 'zählzeiten', 'zählzeit'] }

/** A move repeated through the block: the trade's name for it or one's own, on how many counts, to which side. */
export const MoveFields = memo(function MoveFields({ move, onChange, onRename }: MoveFieldsProps) {
  const [naming, setNaming] = useState(false)
  const isTrade = move !== undefined && TRADE_MOVES.some(({ name }) => name === move.name)
  const own = naming || (move !== undefined && !isTrade)

  const choose = (name: string) => {
    setNaming(name === OWN)
    if (name === NONE) onChange(undefined)
    const trade = TRADE_MOVES.find((candidate) => candidate.name === name)
    if (trade) onChange({ ...move, name: trade.name, counts: move?.counts ?? trade.counts })
  }
  return (
    <>
      <SelectRow label={words.panelsBlock.move} value={own ? OWN : (move?.name ?? NONE)} choices={moveChoices()} onChange={choose} />
      {own && (
        <TextRow
          label={words.panelsBlock.itsName}
          value={isTrade ? '' : move?.name}
          placeholder={words.panels.whatYouCallIt}
          longest={60}
          onChange={(name) => {
            if (name === undefined && move && !isTrade) onChange(undefined)
            if (name === undefined) return
            if (move && !isTrade) onRename(move.name, name)
            else onChange({ ...move, name, counts: move?.counts ?? 8 })
          }}
        />
      )}
      {move && (
        <>
          <QuantityRow
            label={words.panelsBlock.on}
            value={move.counts}
            unit={words.panelsBlock.counts({ count: move.counts })}
            format={String}
            parse={(text) => parseNumber(text, MOVE_COUNTS)}
            onChange={(counts) => onChange({ ...move, counts })}
            step={(counts, direction) => stepMoveCounts(counts, direction)}
          />
          <SelectRow
            label={words.panelsBlock.firstSide}
            value={move.side ?? NONE}
            choices={sideChoices()}
            onChange={(side) => onChange(patched(move, { side: side === NONE ? undefined : side }))}
          />
          <CheckRow
            label={words.panelsBlock.afterFirstSide}
            says={words.panelsBlock.alternate}
            checked={move.then === 'alternate'}
            // biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
            onChange={(alternate) => onChange(patched(move, { then: alternate ? 'alternate' : undefined }))}
          />
        </>
      )}
    </>
  )
})

/** Moves go on 1, 2, 4, 8, 16 counts: arrows step along these, from wherever the count stands. */
export function stepMoveCounts(counts: number, direction: 1 | -1): number {
  const usual = [1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 64]
  const next = direction > 0 ? usual.find((value) => value > counts) : usual.findLast((value) => value < counts)
  return next ?? counts
}
