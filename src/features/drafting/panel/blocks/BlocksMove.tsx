import { useState } from 'react'
import { MOVE_COUNTS, moveChoices, NONE, OWN, sideChoices, stepMoveCounts } from '#features/drafting/panel/block/MoveFields.tsx'
import { TRADE_MOVES } from '#features/drafting/panel/block/tradeMoves.ts'
import { CheckRow } from '#features/drafting/panel/rows/CheckRow.tsx'
import { MixedQuantityRow } from '#features/drafting/panel/rows/MixedQuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import { patched } from '#plan/edits.ts'
import type { Move } from '#plan/model.ts'
import { parseNumber } from '#units/parseNumber.ts'
import { words } from '#words/words.ts'
import type { EachBlock } from './eachBlock.ts'
import { differ, sharedOf } from './sharedOf.ts'

/** The move of several blocks; its counts and sides stay each block's own until they are changed here. */
export function BlocksMove({ each: { blocks, editEach, edit } }: { each: EachBlock }) {
  const [naming, setNaming] = useState(false)
  const kind = sharedOf(blocks, ({ move }) => kindOf(move))
  const moves = blocks.flatMap(({ move }) => move ?? [])
  const all = moves.length === blocks.length
  const change = (next: (move: Move) => Move) => editEach(({ move }) => move && { move: next(move) })
  const choose = (name: string) => {
    const trade = TRADE_MOVES.find((candidate) => candidate.name === name)
    setNaming(name === OWN)
    if (name === NONE) edit({ move: undefined })
    else if (trade) editEach(({ move }) => ({ move: { ...move, name, counts: move?.counts ?? trade.counts } }))
  }
  return (
    <>
      <SelectRow label={words.panelsBlock.move} value={naming ? OWN : kind} choices={moveChoices()} onChange={choose} />
      {(naming || kind === OWN) && (
        <TextRow
          label={words.panelsBlock.itsName}
          value={kind === OWN ? (sharedOf(moves, ({ name }) => name) ?? undefined) : undefined}
          placeholder={kind === OWN ? words.panels.mixed : words.panels.whatYouCallIt}
          longest={60}
          onChange={(name) => name !== undefined && editEach(({ move }) => ({ move: { ...move, name, counts: move?.counts ?? 8 } }))}
        />
      )}
      {all && (
        <>
          <MixedQuantityRow
            label={words.panelsBlock.on}
            value={sharedOf(moves, ({ counts }) => counts)}
            unit={words.panelsBlock.counts({ count: moves[0]!.counts })}
            format={String}
            parse={(text) => parseNumber(text, MOVE_COUNTS)}
            step={stepMoveCounts}
            onChange={(counts) => change((move) => ({ ...move, counts }))}
          />
          <SelectRow
            label={words.panelsBlock.firstSide}
            value={sharedOf(moves, ({ side }) => side ?? NONE)}
            choices={sideChoices()}
            onChange={(side) => change((move) => patched(move, { side: side === NONE ? undefined : side }))}
          />
          <CheckRow
            label={words.panelsBlock.afterFirstSide}
            says={words.panelsBlock.alternate}
            checked={sharedOf(moves, ({ then }) => then ?? '') === 'alternate'}
            mixed={differ(moves, ({ then }) => then)}
            // biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
            onChange={(on) => change((move) => patched(move, { then: on ? 'alternate' : undefined }))}
          />
        </>
      )}
    </>
  )
}

const kindOf = (move: Move | undefined): string =>
  move === undefined ? NONE : TRADE_MOVES.some(({ name }) => name === move.name) ? move.name : OWN
