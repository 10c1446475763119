import { memo } from 'react'
import type { PlayedBlock } from '#engine/report.ts'
import { blockFigure } from '#features/drafting/blockFigure.ts'
import type { Block } from '#plan/model.ts'
import { nameOfItem } from '#plan/names.ts'
import { Figure } from '#ui/figures/Figure.tsx'
import { DragHandle } from './drag/DragHandle.tsx'
import { EdgeHandle } from './drag/EdgeHandle.tsx'

/** Widths, in pixels, from which a card shows more: a level alone, then the total, then words. */
const ROOM = { level: 13, total: 30, words: 52, figure: 88 } as const

export interface BlockCardProps {
  block: Block
  index: number
  round: number
  rounds: number
  x: number
  width: number
  total: string
  change: string
  length: string
  crooked: boolean
  beyond: boolean
  spoken: string
  selected: boolean
  dragged: boolean
  focusable: boolean
  readOnly: boolean
}

/**
 * One block as it is played. It shows as much as its width allows, the total and the call first.
 * All its properties are plain values, so a change elsewhere on the stage does not draw it again.
 */
export const BlockCard = memo(function BlockCard(props: BlockCardProps) {
  const { block, x, width, selected, dragged, round } = props
  const from = Math.round(block.effort.from)
  const to = Math.round(block.effort.to)
  const room = width >= ROOM.words ? 'words' : width >= ROOM.total ? 'total' : width >= ROOM.level ? 'level' : 'none'
  return (
    <div
      className="block"
      data-block-id={block.id}
      data-round={round}
      data-room={room}
      data-selected={selected || undefined}
      data-dragged={dragged || undefined}
      data-crooked={props.crooked || undefined}
      data-beyond={props.beyond || undefined}
      style={{ transform: `translateX(${x}px)`, width: Math.max(2, width - 2) }}
    >
      <DragHandle kind="block" id={block.id}>
        <div
          role="option"
          className="block-body"
          data-stage-stop="block"
          data-id={block.id}
          data-index={props.index}
          tabIndex={props.focusable ? 0 : -1}
          aria-selected={selected}
          aria-label={props.spoken}
        >
          <header
            style={{
              background: from === to ? `var(--effort-${from})` : `linear-gradient(90deg, var(--effort-${from}), var(--effort-${to}))`,
              color: `var(--effort-text-${from})`,
            }}
          >
            {width >= ROOM.figure && <Figure name={blockFigure(block)} />}
            {room === 'words' && <span className="block-name">{nameOfItem(block)}</span>}
            {room !== 'none' && (
              <b className="block-effort" style={{ color: `var(--effort-text-${to})` }}>
                {from === to ? from : width >= 44 ? `${from}–${to}` : to}
              </b>
            )}
          </header>
          {(room === 'words' || room === 'total') && (
            <p className="block-total">
              <b>{props.total}</b> {room === 'words' && <span>{props.change}</span>}
            </p>
          )}
          {room === 'words' && <Details {...props} />}
        </div>
      </DragHandle>
      {!props.readOnly && room !== 'none' && <EdgeHandle index={props.index} />}
    </div>
  )
})

function Details({ block, length, width }: BlockCardProps) {
  const words = block.cues.find((cue) => cue.text)?.text
  return (
    <>
      <p className="block-facts">
        {length}
        {width >= 104 && ` · hands ${block.hands}`}
      </p>
      {block.move && (
        <p className="block-move">
          {block.move.name} on {block.move.counts}
        </p>
      )}
      {words && <p className="block-cue">{words}</p>}
    </>
  )
}

/** The whole block as one sentence, for those who hear the stage. */
export function speakBlock(played: PlayedBlock, at: string, length: string): string {
  const { block, set } = played
  const effort = block.effort.from === block.effort.to ? `${block.effort.from}` : `${block.effort.from} to ${block.effort.to}`
  const round = set ? `, round ${set.round} of ${set.set.rounds}` : ''
  return `${nameOfItem(block)}, ${block.posture}, at ${at}, ${length}, effort ${effort}, ${played.ledger.call}, total ${played.ledger.total}${round}`
}
