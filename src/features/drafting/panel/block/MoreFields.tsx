import { memo } from 'react'
import type { EditBlock } from '#features/drafting/panel/block/actionsOn.ts'
import { CheckRow } from '#features/drafting/panel/rows/CheckRow.tsx'
import { Fold } from '#features/drafting/panel/rows/Fold.tsx'
import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import type { Block, Leader } from '#plan/model.ts'
import { parsed, refused } from '#units/parsed.ts'
import { type NumberRules, parseNumber } from '#units/parseNumber.ts'
import type { Counts } from '#units/units.ts'

interface MoreFieldsProps {
  block: Block
  leaders: readonly Leader[]
  /** Counts in an eight here; absent where the block is measured in seconds and cannot be fitted in eights. */
  eight: Counts | undefined
  edit: EditBlock
}

/** Options and feel, who leads, and what planning is to leave alone: folded while they hold nothing. */
export const MoreFields = memo(function MoreFields({ block, leaders, eight, edit }: MoreFieldsProps) {
  return (
    <>
      <Fold title="options and feel" holds={held([block.easier && 'easier', block.harder && 'harder', block.feel])}>
        <TextRow
          label="easier"
          value={block.easier?.text}
          placeholder="such as stay seated"
          onChange={(text) => edit({ easier: text === undefined ? undefined : { text } })}
        />
        <TextRow
          label="harder"
          value={block.harder?.text}
          placeholder="such as a quarter more"
          onChange={(text) => edit({ harder: text === undefined ? undefined : { text } })}
        />
        <TextRow label="feels like" value={block.feel} placeholder="such as heavy, smooth" onChange={(feel) => edit({ feel })} />
      </Fold>
      <Fold title="water, walk, all-out" holds={held([block.water && 'water', block.walk && 'walk', block.allOut && 'all-out'])}>
        <CheckRow
          label="water"
          says="riders drink here"
          checked={block.water === true}
          onChange={(on) => edit({ water: on || undefined })}
        />
        <CheckRow
          label="walk"
          says="you are off the bike, among the riders"
          checked={block.walk === true}
          onChange={(on) => edit({ walk: on || undefined })}
        />
        <CheckRow
          label="all-out"
          says="nothing held back; needs long recovery"
          checked={block.allOut === true}
          onChange={(on) => edit({ allOut: on || undefined })}
        />
      </Fold>
      {leaders.length > 1 && (
        <div className="panel-rows">
          <SelectRow
            label="leads"
            value={block.leader ?? leaders[0]!.id}
            choices={leaders.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={(id) => edit({ leader: id === leaders[0]!.id ? undefined : id })}
          />
          <SelectRow
            label="on the mic"
            value={block.mic ?? SAME}
            choices={[{ value: SAME, label: 'who leads' }, ...leaders.map(({ id, name }) => ({ value: id, label: name }))]}
            onChange={(id) => edit({ mic: id === SAME ? undefined : id })}
          />
        </div>
      )}
      <Fold
        title="lock and fitting"
        holds={held([
          block.locked && 'locked',
          block.minEights !== undefined && `at least ${block.minEights}`,
          block.maxEights !== undefined && `at most ${block.maxEights}`,
        ])}
      >
        <CheckRow
          label="locked"
          says="fitting and cutting leave it alone"
          checked={block.locked === true}
          onChange={(on) => edit({ locked: on || undefined })}
        />
        {eight !== undefined && (
          <>
            <OptionalQuantityRow
              label="at least"
              value={block.minEights}
              unit={eight === 6 ? 'sixes' : 'eights'}
              placeholder="any length"
              format={String}
              parse={(text) => boundOf(text, (value) => value <= (block.maxEights ?? value), 'At least cannot be more than at most.')}
              onChange={(minEights) => edit({ minEights })}
              step={(value, direction) => Math.max(1, Math.min(block.maxEights ?? EIGHTS.max, value + direction))}
            />
            <OptionalQuantityRow
              label="at most"
              value={block.maxEights}
              unit={eight === 6 ? 'sixes' : 'eights'}
              placeholder="any length"
              format={String}
              parse={(text) => boundOf(text, (value) => value >= (block.minEights ?? value), 'At most cannot be less than at least.')}
              onChange={(maxEights) => edit({ maxEights })}
              step={(value, direction) => Math.max(block.minEights ?? 1, Math.min(EIGHTS.max, value + direction))}
            />
          </>
        )}
      </Fold>
      <Fold title="notes" holds={block.notes && 'written'}>
        <TextRow
          label="notes"
          value={block.notes}
          rows={2}
          placeholder="what to remember"
          longest={2000}
          onChange={(notes) => edit({ notes })}
        />
      </Fold>
    </>
  )
})

const SAME = ''
const EIGHTS: NumberRules = {
  of: 'eights',
  min: 1,
  max: 200,
  suffixes: ['eights', 'eight', 'sixes', 'six', 'achter', 'sechser'],
}

function boundOf(text: string, fits: (value: number) => boolean, otherwise: string) {
  const value = parseNumber(text, EIGHTS)
  return value.ok ? (fits(value.value) ? parsed(value.value) : refused(otherwise)) : value
}

/** The values of a fold in a few words; undefined where there are none. */
function held(values: readonly (string | false | undefined)[]): string | undefined {
  const words = values.filter((value) => value !== undefined && value !== false && value !== '')
  return words.length === 0 ? undefined : words.join(', ')
}
