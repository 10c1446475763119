import type { ShownOn } from '#engine/anotherBike/readTotal.ts'
import { formatTotal } from '#engine/ledger/sayCall.ts'
import { sayOwnTotal } from '#engine/ledger/sayOwnTotal.ts'
import type { Alignment, LedgerEntry, PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { blockFigure } from '#features/drafting/blockFigure.ts'
import { unitOfTotals, usePlayed } from '#features/drafting/panel/played.ts'
import type { Block, Ride } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { Figure } from '#ui/figures/Figure.tsx'
import { clock, duration } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'

/** What a block is, where it stands, the total it arrives at and how that is called. */
export function BlockHeader({ block }: { block: Block }) {
  const played = usePlayed(block.id)
  const eight = useApp((state) => played && state.shownReport?.sections[played.section]?.unit.eight)
  const over = useApp((state) => state.shown && unitShown(state.shown, state.shownReport?.shownOn, played?.ledger))
  const ledger = useApp((state) => played && state.shown && sayLedger(played.ledger, state.shown))
  const own = useApp((state) => (played && state.shown ? tell(sayOwnTotal(played, state.shown.bike)) : ''))
  const pace = useApp((state) => played && state.shown && paceCall(state.shown, state.shownReport, played.index))
  return (
    <header className="panel-header">
      <h2>
        <Figure name={blockFigure(block)} size={18} />
        <span className="panel-name">{tell(itemName(block))}</span>
      </h2>
      {played && (
        <>
          <p className="panel-where">{sayWhere(played, eight)}</p>
          {played.set && <p className="panel-where">{sayRound(played)}</p>}
          <p className="panel-total">
            <b>{tell(played.ledger.total)}</b> <span>{over}</span>
            {own && <span className="panel-own"> {own}</span>}
          </p>
          <p className="panel-call">
            <q>{tell(played.ledger.call)}</q> {pace && <q>{pace}</q>}
            <span>{ledger}</span>
          </p>
        </>
      )}
    </header>
  )
}

/** "6:19 · 8 eights · 24 s · song 3, on the phrase". */
function sayWhere(played: PlayedBlock, eight: number | undefined): string {
  const { length } = played.block
  const place = words.names.songPlace({ place: played.section + 1 })
  const parts = [
    clock(played.from),
    'counts' in length && words.measures.eights(length.counts, eight),
    duration(played.to - played.from),
    played.alignment ? words.panelsBlock.placeAnd({ place, alignment: sayAlignment(played.alignment) }) : place,
  ]
  return parts.filter((part) => part !== false).join(' · ')
}

/** "turns over base"; on another bike "levels: solid hill". */
function unitShown(ride: Ride, on: ShownOn | undefined, ledger: LedgerEntry | undefined): string {
  if (!on || !ledger?.reading) return unitOfTotals(ride.bike, ride.datum, ledger?.after)
  const { small, feel } = ledger.reading
  return tell(small).startsWith('~') ? words.panelsBlock.feels({ units: unitOfTotals(on.bike, on.datum), feel: tell(feel) }) : tell(feel)
}

/** "¾ → 1½": what riders have before the call and after it; nothing where that is the same. On another bike, what rounding does. */
function sayLedger({ before, after, reading }: LedgerEntry, ride: Ride): string {
  if (reading) return tell(reading.rounding)
  const [from, to] = [tell(formatTotal(before, ride.bike)), tell(formatTotal(after, ride.bike))]
  return from === to ? '' : `${from} → ${to}`
}

function sayAlignment({ grade, fromEight }: Alignment): string {
  return grade === 'count' ? words.panelsBlock.fromEight(fromEight) : words.panelsBlock.grade({ grade })
}

function sayRound({ set }: PlayedBlock): string {
  return words.panelsBlock.round({ part: set!.part, rounds: set!.set.rounds })
}

/** The call of a new pace, where the knob stays. */
function paceCall(ride: Ride, report: RideReport | null, index: number): string | undefined {
  const pace = report?.cues.changes.find((change) => change.block === index)?.pace
  return pace && speechOf(ride).calls.pace(pace.step)
}
