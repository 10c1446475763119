import { type MouseEvent, memo, useDeferredValue, useMemo } from 'react'
import type { CueLine } from '#engine/cues/placeCues.ts'
import { linesByBlock } from '#engine/cues/spokenOrder.ts'
import { isCrooked } from '#engine/findings/crookedBlock.ts'
import { sayOwnTotal } from '#engine/ledger/sayOwnTotal.ts'
import type { PlayedBlock, Span } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { isSet, type Ride } from '#plan/model.ts'
import type { Stretch } from '#units/units.ts'
import { duration } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
import { BlockCard, speakBlock } from './BlockCard.tsx'
import { DragHandle } from './drag/DragHandle.tsx'
import { reaches } from './drawnStretch.ts'
import { type LeaderMark, leaderMarks } from './leaderMark.ts'
import { type TimeScale, toX } from './timeScale.ts'
import './blocks.css'

/** A press on a block or a set, with the keys held. */
export type SelectItem = (id: string, event: { shiftKey: boolean; ctrlKey: boolean; metaKey: boolean }) => void

interface BlocksProps {
  ride: Ride
  report: RideReport
  scale: TimeScale
  /** As much of the ride as is drawn; what is selected, focused or in the hand is drawn wherever it stands. */
  stretch: Stretch
  selectedIds: readonly string[]
  draggedId: string | null
  readOnly: boolean
  onSelect: SelectItem
  onSelectSection: (sectionId: string) => void
}

/** All blocks in one row of their own: a block keeps its element while it moves from song to song. */
export const BlockLane = memo(function BlockLane({
  ride,
  report,
  scale,
  stretch,
  selectedIds,
  draggedId,
  readOnly,
  onSelect,
  onSelectSection,
}: BlocksProps) {
  // A list without anything to choose in it is none to a screen reader.
  const isList = report.blocks.length > 0
  const later = useLater(report)
  const marks = useMemo(() => leaderMarks(ride), [ride])
  const lines = useMemo(() => linesByBlock(report), [report])
  const shaky = useMemo(() => new Set(ride.shaky), [ride.shaky])
  const stop = report.blocks.find((played) => selectedIds.includes(played.block.id))?.index ?? 0
  const select = (event: MouseEvent) => {
    const pressed = event.target as Element
    const target = pressed.closest<HTMLElement>('[data-stage-stop="block"], [data-stage-stop="set"]')
    const open = pressed.closest<HTMLElement>('[data-open-section]')
    if (target?.dataset.id) onSelect(target.dataset.id, event)
    else if (open?.dataset.openSection) onSelectSection(open.dataset.openSection)
  }
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the keys of the stage are handled on the stage as a whole
    // biome-ignore lint/a11y/noStaticElementInteractions: it has a role, of a list or of a group
    // biome-ignore lint/a11y/useAriaPropsSupportedByRole: what only a list has is left out where it is none
    <div
      className="blocks"
      role={isList ? 'listbox' : 'group'}
      aria-multiselectable={isList || undefined}
      aria-orientation={isList ? 'horizontal' : undefined}
      aria-label={words.drafting.blocks}
      tabIndex={-1}
      onClick={select}
    >
      {report.blocks.map((played) => {
        const key = keyOf(played)
        const isSelected = isOneOf(selectedIds, played)
        const isDragged = draggedId !== null && isOneOf([draggedId], played)
        const isStop = played.index === stop
        const isDrawn = isSelected || isDragged || isStop || reaches(stretch, played)
        const isShaky = shaky.has(played.block.id)
        const before = later.get(key)
        const mark = marks.get(played.block.id)
        return (
          <BlockCard
            key={key}
            block={played.block}
            index={played.index}
            round={played.set?.round ?? 1}
            {...(isDrawn
              ? { ...cardOf(played, ride, report, scale, mark, isShaky), words: firstWords(lines[played.index]!) }
              : placeOf(before?.played ?? played, before?.report ?? report, scale, mark, isShaky))}
            selected={isSelected}
            shaky={isShaky}
            dragged={isDragged}
            focusable={isStop}
            readOnly={readOnly}
            drawn={isDrawn}
          />
        )
      })}
      {report.blocks.length === 0 && report.overall.total === 0 && !readOnly && <p className="stage-empty">{words.drafting.emptyRide}</p>}
      {report.spans
        .filter(isRest)
        .filter((span) => reaches(stretch, span))
        .map((span) => (
          <Rest key={`${span.kind} ${span.sectionId ?? ''}`} span={span} scale={scale} readOnly={readOnly} />
        ))}
      {ride.sections
        .flatMap((section) => section.blocks.filter(isSet))
        .map((set) => (
          <SetBracket
            key={set.id}
            id={set.id}
            rounds={set.rounds}
            label={set.label}
            report={report}
            scale={scale}
            selected={selectedIds.includes(set.id)}
          />
        ))}
    </div>
  )
})

/**
 * The blocks a moment later, each with the report it is of: what is out of sight and only heard follows a change when what
 * is seen has been drawn.
 */
function useLater(report: RideReport): ReadonlyMap<string, { played: PlayedBlock; report: RideReport }> {
  const later = useDeferredValue(report)
  return useMemo(() => new Map(later.blocks.map((played) => [keyOf(played), { played, report: later }])), [later])
}

/** Pixels from which a card says what the leader rides beside what the class is told. */
const ROOM_FOR_OWN = 128

/** What a block is known by while it moves: a part of a set once a round. */
const keyOf = ({ block, set }: PlayedBlock): string => `${block.id}:${set?.round ?? 1}`

const isOneOf = (ids: readonly string[], { block, set }: PlayedBlock): boolean =>
  ids.includes(block.id) || (set !== undefined && ids.includes(set.set.id))

const NOTHING_ON_IT = { total: '', change: '', length: '', leader: '', words: '', crooked: false, beyond: false } as const

/** Where a block stands and what it is called, for a card with nothing on it. */
function placeOf(played: PlayedBlock, report: RideReport, scale: TimeScale, mark: LeaderMark | undefined, shaky: boolean) {
  return {
    ...NOTHING_ON_IT,
    x: tenth(toX(scale, played.from)),
    width: tenth(toX(scale, played.to - played.from)),
    spoken: speakBlock(played, played.from, lengthOf(played, report), mark?.spoken, shaky),
  }
}

/** What is said first of a block. */
const firstWords = (lines: readonly CueLine[]): string => lines.find(({ cue }) => cue.text)?.cue.text ?? ''

/** All that stands on a card. */
function cardOf(played: PlayedBlock, ride: Ride, report: RideReport, scale: TimeScale, mark: LeaderMark | undefined, shaky: boolean) {
  const place = placeOf(played, report, scale, mark, shaky)
  // A reading on another bike is only about right: what it feels like says more than that it is the new total.
  const change = tell(played.ledger.reading?.feel ?? played.ledger.change)
  const own = place.width >= ROOM_FOR_OWN ? tell(sayOwnTotal(played, ride.bike)) : ''
  return {
    ...place,
    total: played.ledger.reading?.small ?? played.ledger.total,
    change: own ? `${change} · ${own}` : change,
    length: lengthOf(played, report),
    leader: mark?.letter ?? '',
    crooked: isCrooked(played, ride.sections[played.section]!, report.sections[played.section]!.unit.eight),
    beyond: played.beyond > 0,
  }
}

function lengthOf({ section, from, to, countFrom, countTo }: PlayedBlock, report: RideReport): string {
  if (countFrom === undefined || countTo === undefined) return duration(to - from)
  return words.measures.eights(countTo - countFrom, report.sections[section]!.unit.eight)
}

const tenth = (x: number): number => Math.round(x * 10) / 10

const RESTS = ['openTail', 'briefing', 'clearUp'] as const

type RestSpan = Span & { kind: (typeof RESTS)[number] }
const isRest = (span: Span): span is RestSpan => (RESTS as readonly string[]).includes(span.kind)

/** Time that no block fills: the words before the first song, a song's open end, the wiping down. */
function Rest({ span, scale, readOnly }: { span: RestSpan; scale: TimeScale; readOnly: boolean }) {
  const width = toX(scale, span.to - span.from)
  if (width < 3) return null
  return (
    <div
      className="rest"
      data-kind={span.kind}
      data-open-section={span.kind === 'openTail' ? span.sectionId : undefined}
      style={{ left: toX(scale, span.from), width: width - 2 }}
    >
      {width > 48 && words.drafting.rest({ rest: span.kind, length: span.to - span.from })}
      {width > 190 && span.kind === 'openTail' && !readOnly && <p>{words.drafting.fillHere}</p>}
    </div>
  )
}

/** The bracket over a set's rounds: its handle for picking the set up as a whole. */
function SetBracket({
  id,
  rounds,
  label,
  report,
  scale,
  selected,
}: {
  id: string
  rounds: number
  label?: string | undefined
  report: RideReport
  scale: TimeScale
  selected: boolean
}) {
  const set = report.sets.find((other) => other.setId === id)
  if (!set) return null
  const name = words.drafting.rounds({ label: label ?? '', rounds })
  return (
    <div
      className="set"
      data-selected={selected || undefined}
      style={{ left: toX(scale, set.from), width: toX(scale, set.to - set.from) - 2 }}
    >
      <DragHandle kind="set" id={id}>
        <button
          type="button"
          className="set-head"
          data-stage-stop="set"
          data-id={id}
          tabIndex={selected ? 0 : -1}
          role="option"
          aria-selected={selected}
          title={name}
        >
          {name}
        </button>
      </DragHandle>
    </div>
  )
}
