import {
  callOfKind,
  formatTotals,
  kindOfCall,
  nudgeTotals,
  parseChange,
  parseOneTotal,
  parseTotal,
  withRange,
} from '#features/drafting/panel/block/call.ts'
import { kindChoices, modeChoices } from '#features/drafting/panel/block/ResistanceFields.tsx'
import { playedNow, unitOfTotals } from '#features/drafting/panel/played.ts'
import { MixedQuantityRow } from '#features/drafting/panel/rows/MixedQuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { shiftTotals } from '#plan/commands/shiftTotals.ts'
import { patched } from '#plan/edits.ts'
import { limitsOf } from '#plan/ledger/limits.ts'
import { changeOf } from '#plan/ledger/turnedBy.ts'
import type { Block, ByFeel, Change, Resistance, Total } from '#plan/model.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { parsed } from '#units/parsed.ts'
import { setting } from '#words/forms.ts'
import { say } from '#words/said.ts'
import { words } from '#words/words.ts'
import type { EachBlock } from './eachBlock.ts'
import { ShiftRow } from './ShiftRow.tsx'
import { sharedOf } from './sharedOf.ts'

/** What riders are told to do with the knob in several blocks: the kind of call, then what calls of that one kind have. */
export function BlocksResistance({ each }: { each: EachBlock }) {
  const store = useAppStore()
  const bike = useApp((state) => state.shown!.bike)
  const { blocks, editEach } = each
  const kind = sharedOf(blocks, ({ resistance }) => kindOfCall(resistance))
  const blockIds = blocks.map(({ id }) => id)
  return (
    <>
      <SelectRow
        label={words.panelsBlock.knob}
        value={kind}
        choices={kindChoices()}
        onChange={(next) =>
          editEach(({ id, resistance }) => {
            const entry = playedNow(store.getState(), id)?.ledger
            return entry && { resistance: callOfKind(next, resistance, entry, bike.stepsPerUnit) }
          })
        }
      />
      {blocks.every(isChange) && <ChangeRows each={each} changes={blocks.map(({ resistance }) => resistance)} />}
      {(kind === 'total' || kind === 'byFeel') && <TotalRow each={each} label={words.panelsBlock[kind === 'total' ? 'to' : 'about']} />}
      <OwnTotal each={each} />
      <ShiftRow bike={bike} onShift={(steps) => void store.getState().run(shiftTotals(store.getState().ride!, { blockIds, steps }))} />
    </>
  )
}

const isChange = (block: Block): block is Block & { resistance: Change } => block.resistance.kind === 'change'

function ChangeRows({ each: { editEach }, changes }: { each: EachBlock; changes: readonly Change[] }) {
  const bike = useApp((state) => state.shown!.bike)
  const turn = (change: Change) => editEach(({ resistance }) => ({ resistance: { ...change, ...checkpointOf(resistance) } }))
  const same = sharedOf(changes, ({ steps }) => steps)
  return (
    <>
      <MixedQuantityRow
        label={words.panelsBlock.by}
        value={same === null ? null : changes[0]!}
        unit={words.measures.unitOf(bike.unit, true)}
        format={({ steps }) => setting(Math.abs(steps), bike.stepsPerUnit)}
        parse={(text) => parseChange(text, bike, changes[0]!)}
        step={(change, up, large) => {
          const sign = change.steps < 0 ? -1 : 1
          return changeOf(change, sign * Math.max(1, Math.abs(change.steps) + up * (large ? bike.stepsPerUnit : 1)))
        }}
        onChange={({ steps, mode }) => (mode === changes[0]!.mode ? editSteps(steps) : turn({ kind: 'change', mode, steps }))}
      />
      <SelectRow
        label={words.panelsBlock.how}
        value={sharedOf(changes, ({ mode }) => mode)}
        choices={modeChoices()}
        onChange={(mode) => editEach(({ resistance }) => ({ resistance: { ...(resistance as Change), mode } }))}
      />
    </>
  )

  /** Another size leaves each change the way it is meant. */
  function editSteps(steps: number) {
    editEach(({ resistance }) => ({ resistance: changeOf(resistance as Change, steps) }))
  }
}

const checkpointOf = (resistance: Resistance) =>
  'checkpoint' in resistance && resistance.checkpoint ? { checkpoint: resistance.checkpoint } : {}

function TotalRow({ each: { blocks, editEach }, label }: { each: EachBlock; label: string }) {
  const { bike, datum } = useApp((state) => state.shown!)
  const limits = limitsOf({ bike, datum })
  const totalOf = ({ resistance }: Block) => resistance as Total | ByFeel
  const shared = sharedOf(blocks, (block) => {
    const { from, to, orMore } = totalOf(block)
    return patched({ from, to }, { orMore } as object)
  })
  return (
    <MixedQuantityRow
      label={label}
      value={shared}
      unit={unitOfTotals(bike, datum)}
      format={(range) => formatTotals(range, bike)}
      parse={(text) => parseTotal(text, bike, limits)}
      onChange={(range) => editEach((block) => ({ resistance: withRange(totalOf(block), range) }))}
      step={(range, direction, large) => nudgeTotals(range, direction * (large ? bike.stepsPerUnit : 1), limits)}
    />
  )
}

/** What the instructor rides beside what the class is told; emptied, the same as the class. */
function OwnTotal({ each: { blocks, edit } }: { each: EachBlock }) {
  const { bike, datum } = useApp((state) => state.shown!)
  const limits = limitsOf({ bike, datum })
  const shared = sharedOf(blocks, ({ ownTotal }) => ownTotal ?? SAME)
  return (
    <MixedQuantityRow<number | typeof SAME>
      label={words.panelsBlock.youRide}
      value={shared}
      placeholder={words.panelsBlock.sameAsClass}
      format={(steps) => (steps === SAME ? '' : setting(steps, bike.stepsPerUnit))}
      parse={(text) => (text.trim() === '' ? parsed(SAME) : parseOneTotal(text, bike, limits, say('panelsBlock.oneForYou')))}
      onChange={(steps) => edit({ ownTotal: steps === SAME ? undefined : steps })}
      step={(steps, direction) => (steps === SAME ? steps : Math.min(limits.ceiling, Math.max(limits.floor, steps + direction)))}
    />
  )
}

const SAME = 'same'
