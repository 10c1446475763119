import { USUAL_RPM } from '#features/drafting/panel/block/actionsOn.ts'
import { cadenceChoices, readRpm, stepRpm } from '#features/drafting/panel/block/CadenceFields.tsx'
import { type CadenceKind, cadenceKindOf, cadenceOfKind } from '#features/drafting/panel/block/cadenceKind.ts'
import { playedNow } from '#features/drafting/panel/played.ts'
import { MixedQuantityRow } from '#features/drafting/panel/rows/MixedQuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { patched } from '#plan/edits.ts'
import type { Block, Song } from '#plan/model.ts'
import { useAppStore } from '#store/useApp.ts'
import type { Choice } from '#ui/Select.tsx'
import { parsed } from '#units/parsed.ts'
import { number } from '#words/forms.ts'
import { words } from '#words/words.ts'
import type { EachBlock } from './eachBlock.ts'
import { sharedOf } from './sharedOf.ts'

/** How fast the legs go in several blocks, on the beat of whatever song each is in, or off it. */
export function BlocksCadence({ each }: { each: EachBlock }) {
  const store = useAppStore()
  const { blocks, songs, editEach } = each
  const kind = sharedOf(blocks, cadenceKindOf)
  const stated = blocks.flatMap(({ cadence }) => (cadence === undefined || cadence === 'legsStill' ? [] : [cadence]))
  const choose = (next: CadenceKind) =>
    editEach(({ id }, i) => {
      const now = playedNow(store.getState(), id)?.cadence
      // Half time without a beat means nothing: such blocks stay as they are.
      if (!songs[i]?.grid && isOfBeat(next)) return undefined
      return cadenceOfKind(next, songs[i], now?.kind === 'turning' ? now.from : USUAL_RPM)
    })
  const state = (change: (cadence: Stated) => Stated) => editEach(({ cadence }) => ({ cadence: change(cadence as Stated) }))
  return (
    <>
      <SelectRow label={words.panelsBlock.cadence} value={kind} choices={choicesFor(songs, kind)} onChange={choose} />
      {stated.length === blocks.length && (
        <>
          <MixedQuantityRow
            label={words.panelsBlock.rpm}
            value={sharedOf(stated, ({ rpm }) => rpm)}
            format={(value) => number(value, 1)}
            parse={readRpm}
            step={stepRpm}
            onChange={(rpm) => state((cadence) => ({ ...cadence, rpm }))}
          />
          <MixedQuantityRow<number | typeof STEADY>
            label={words.panelsBlock.rampTo}
            value={sharedOf(stated, ({ rampTo }) => rampTo ?? STEADY)}
            placeholder={words.panelsBlock.steady}
            format={(value) => (value === STEADY ? '' : number(value, 1))}
            parse={(text) => (text.trim() === '' ? parsed(STEADY) : readRpm(text))}
            step={(value, direction, large) => (value === STEADY ? value : stepRpm(value, direction, large))}
            onChange={(rampTo) => state((cadence) => patched(cadence, { rampTo: rampTo === STEADY ? undefined : rampTo }))}
          />
        </>
      )}
    </>
  )
}

type Stated = Exclude<NonNullable<Block['cadence']>, 'legsStill'>

const STEADY = 'steady'

const isOfBeat = (kind: CadenceKind): boolean => kind === 'half' || kind === 'one' || kind === 'two'

/** With figures where all stand in one tempo, without them where each song has its own. */
function choicesFor(songs: EachBlock['songs'], kind: CadenceKind | null): readonly Choice<CadenceKind>[] {
  const beat = sharedOf(songs, (song) => [song?.grid, song?.strikesPerBeat])
  const choices = beat !== null || !songs.some((song) => song?.grid) ? cadenceChoices(songs[0] as Song | null) : ofSeveral()
  return kind === null || choices.some(({ value }) => value === kind)
    ? choices
    : [...choices, { value: kind, label: words.panelsBlock.beatWithoutTempo }]
}

const ofSeveral = (): readonly Choice<CadenceKind>[] => [
  { value: 'song', label: words.many.withSong },
  { value: 'half', label: words.many.half },
  { value: 'one', label: words.many.one },
  { value: 'two', label: words.many.two },
  { value: 'stated', label: words.panelsBlock.cadenceSet },
  { value: 'still', label: words.panelsBlock.wheelStopped },
]
