import { memo } from 'react'
import { withoutName } from '#engine/cues/withoutName.ts'
import { shortTotal } from '#engine/ledger/sayCall.ts'
import type { PlayedBlock } from '#engine/played.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { blockFigure } from '#features/drafting/blockFigure.ts'
import type { Block } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { Figure } from '#ui/figures/Figure.tsx'
import type { Seconds } from '#units/units.ts'
import { tell, words } from '#words/words.ts'
import { DragHandle } from './drag/DragHandle.tsx'
import { EdgeHandle } from './drag/EdgeHandle.tsx'

/** Widths, in pixels, from which a card shows more: a level alone, then the total, then words. */
const ROOM = { level: 13, total: 30, ramp: 44, words: 52, figure: 88, hands: 104 } as const

interface BlockCardProps {
  block: Block
  index: number
  round: number
  x: number
  width: number
  total: string
  change: string
  length: string
  /** Who leads, in a class that two share. */
  leader: string
  /** What is said first of it. */
  words: string
  crooked: boolean
  beyond: boolean
  /** Marked to be rehearsed again. */
  shaky: boolean
  spoken: string
  selected: boolean
  dragged: boolean
  focusable: boolean
  readOnly: boolean
  /** Out of sight there is a place to go to, with its name for those who hear the stage, and nothing on it. */
  drawn: boolean
}

/**
 * One block as it is played. All its properties are plain values, so a change elsewhere on the stage does
 * not draw it again; a change before it moves it and draws nothing inside it.
 */
export const BlockCard = memo(function BlockCard(props: BlockCardProps) {
  const { block, x, width, selected } = props
  const room = width >= ROOM.words ? 'words' : width >= ROOM.total ? 'total' : width >= ROOM.level ? 'level' : 'none'
  return (
    <div
      role="option"
      className="block"
      data-block-id={block.id}
      data-stage-stop="block"
      data-id={block.id}
      data-index={props.index}
      data-round={props.round}
      data-room={room}
      data-selected={selected || undefined}
      data-dragged={props.dragged || undefined}
      data-crooked={props.crooked || undefined}
      data-beyond={props.beyond || undefined}
      data-shaky={props.shaky || undefined}
      tabIndex={props.focusable ? 0 : -1}
      aria-selected={selected}
      aria-label={props.spoken}
      style={{ left: x, width: Math.max(2, width - 2) }}
    >
      {props.drawn && (
        <BlockBody
          block={block}
          room={room}
          figure={width >= ROOM.figure}
          ramp={width >= ROOM.ramp}
          hands={width >= ROOM.hands}
          total={shortTotal(props.total)}
          change={props.change}
          length={props.length}
          leader={props.leader}
          words={props.words}
          shaky={props.shaky}
        />
      )}
      {props.drawn && !props.readOnly && <EdgeHandle index={props.index} side="start" />}
      {props.drawn && !props.readOnly && <EdgeHandle index={props.index} side="end" />}
    </div>
  )
})

interface BlockBodyProps {
  block: Block
  room: 'none' | 'level' | 'total' | 'words'
  /** Room for the figure, for both ends of a ramp, for the hands in words. */
  figure: boolean
  ramp: boolean
  hands: boolean
  total: string
  change: string
  length: string
  leader: string
  words: string
  shaky: boolean
}

/** What stands on the card: as much as its width allows, the total and the call first. */
const BlockBody = memo(function BlockBody(props: BlockBodyProps) {
  const { block, room, figure, ramp, hands, total, change, length, leader, shaky } = props
  const from = Math.round(block.effort.from)
  const to = Math.round(block.effort.to)
  const name = tell(itemName(block))
  const speech = useApp((state) => speechOf(state.shown ?? {}))
  const said = withoutName(props.words, name, speech)
  return (
    <DragHandle kind="block" id={block.id}>
      <div className="block-body">
        <header
          style={{
            background: from === to ? `var(--effort-${from})` : `linear-gradient(90deg, var(--effort-${from}), var(--effort-${to}))`,
            color: `var(--effort-text-${from})`,
          }}
        >
          {figure && <Figure name={blockFigure(block)} />}
          {shaky && <ShakySign />}
          {room === 'words' && <span className="block-name">{name}</span>}
          {room !== 'none' && (
            <b className="block-effort" style={{ color: `var(--effort-text-${to})` }}>
              {from === to ? from : ramp ? `${from}–${to}` : to}
            </b>
          )}
        </header>
        {(room === 'words' || room === 'total') && (
          <p className="block-total">
            <b>{total}</b> {room === 'words' && <span>{change}</span>}
          </p>
        )}
        {room === 'total' && leader && <p className="block-leader">{leader}</p>}
        {room === 'words' && (
          <>
            <p className="block-facts">
              {leader && (
                <span>
                  <b className="block-leader">{leader}</b>&nbsp;
                </span>
              )}
              {shaky && (
                <span>
                  <b>{words.drafting.needsPractice}</b>&nbsp;
                </span>
              )}
              <span>
                {shaky && <>·&nbsp;</>}
                {length}
              </span>
              {hands && <span>&nbsp;· {words.drafting.hands({ hands: words.names.hands({ hands: block.hands }) })}</span>}
            </p>
            {block.move && <p className="block-move">{words.drafting.move({ move: block.move.name, counts: block.move.counts })}</p>}
            {said && <p className="block-cue">{said}</p>}
          </>
        )}
      </div>
    </DragHandle>
  )
})

/** The whole block as one sentence, for those who hear the stage. */
export function speakBlock(played: PlayedBlock, at: Seconds, length: string, leader = '', shaky = false): string {
  const { block, set, ledger } = played
  return words.drafting.spokenBlock({
    name: tell(itemName(block)),
    posture: words.names.posture({ posture: block.posture }),
    at,
    length,
    effort: block.effort,
    call: ledger.call,
    total: ledger.total,
    round: set && { at: set.round, of: set.set.rounds },
    leader,
    needsPractice: shaky,
  })
}

/** A wavering line: this block is marked as shaky. The word stands beside it where there is room. */
function ShakySign() {
  return (
    <svg className="shaky-sign" viewBox="0 0 14 8" width="14" height="8" aria-hidden="true">
      <path d="M1 5.5 3.4 2 5.8 6 8.2 2 10.6 6 13 2.5" fill="none" stroke="currentColor" strokeWidth="1.5" strokeLinejoin="round" />
    </svg>
  )
}
