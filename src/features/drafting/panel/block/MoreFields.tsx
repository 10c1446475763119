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
import { words } from '#words/words.ts'

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
      <Fold
        title={words.panelsBlock.options}
        holds={held([block.easier && words.panelsBlock.easier, block.harder && words.panelsBlock.harder, block.feel])}
      >
        <TextRow
          label={words.panelsBlock.easier}
          value={block.easier?.text}
          placeholder={words.panelsBlock.easierExample}
          onChange={(text) => edit({ easier: text === undefined ? undefined : { text } })}
        />
        <TextRow
          label={words.panelsBlock.harder}
          value={block.harder?.text}
          placeholder={words.panelsBlock.harderExample}
          onChange={(text) => edit({ harder: text === undefined ? undefined : { text } })}
        />
        <TextRow
          label={words.panelsBlock.feelsLike}
          value={block.feel}
          placeholder={words.panelsBlock.feelExample}
          onChange={(feel) => edit({ feel })}
        />
      </Fold>
      <Fold
        title={words.panelsBlock.waterWalkAllOut}
        holds={held([
          block.water && words.panelsBlock.water,
          block.walk && words.panelsBlock.walk,
          block.allOut && words.panelsBlock.allOut,
        ])}
      >
        <CheckRow
          label={words.panelsBlock.water}
          says={words.panelsBlock.waterSays}
          checked={block.water === true}
          onChange={(on) => edit({ water: on || undefined })}
        />
        <CheckRow
          label={words.panelsBlock.walk}
          says={words.panelsBlock.walkSays}
          checked={block.walk === true}
          onChange={(on) => edit({ walk: on || undefined })}
        />
        <CheckRow
          label={words.panelsBlock.allOut}
          says={words.panelsBlock.allOutSays}
          checked={block.allOut === true}
          onChange={(on) => edit({ allOut: on || undefined })}
        />
      </Fold>
      {leaders.length > 1 && (
        <div className="panel-rows">
          <SelectRow
            label={words.panels.leads}
            value={block.leader ?? leaders[0]!.id}
            choices={leaders.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={(id) => edit({ leader: id === leaders[0]!.id ? undefined : id })}
          />
          <SelectRow
            label={words.panels.onMic}
            value={block.mic ?? SAME}
            choices={[{ value: SAME, label: words.panelsBlock.whoLeads }, ...leaders.map(({ id, name }) => ({ value: id, label: name }))]}
            onChange={(id) => edit({ mic: id === SAME ? undefined : id })}
          />
        </div>
      )}
      <Fold
        title={words.panelsBlock.lockAndFitting}
        holds={held([
          block.locked && words.panelsBlock.locked,
          block.minEights !== undefined && words.panelsBlock.heldLeast({ eights: block.minEights }),
          block.maxEights !== undefined && words.panelsBlock.heldMost({ eights: block.maxEights }),
        ])}
      >
        <CheckRow
          label={words.panelsBlock.locked}
          says={words.panelsBlock.lockedSays}
          checked={block.locked === true}
          onChange={(on) => edit({ locked: on || undefined })}
        />
        {eight !== undefined && (
          <>
            <OptionalQuantityRow
              label={words.panelsBlock.fitLeast}
              value={block.minEights}
              unit={words.panels.groups({ six: eight === 6 })}
              placeholder={words.panelsBlock.anyLength}
              format={String}
              parse={(text) => boundOf(text, (value) => value <= (block.maxEights ?? value), words.panelsBlock.leastOverMost)}
              onChange={(minEights) => edit({ minEights })}
              step={(value, direction) => Math.max(1, Math.min(block.maxEights ?? EIGHTS.max, value + direction))}
            />
            <OptionalQuantityRow
              label={words.panelsBlock.fitMost}
              value={block.maxEights}
              unit={words.panels.groups({ six: eight === 6 })}
              placeholder={words.panelsBlock.anyLength}
              format={String}
              parse={(text) => boundOf(text, (value) => value >= (block.minEights ?? value), words.panelsBlock.mostUnderLeast)}
              onChange={(maxEights) => edit({ maxEights })}
              step={(value, direction) => Math.max(block.minEights ?? 1, Math.min(EIGHTS.max, value + direction))}
            />
          </>
        )}
      </Fold>
      <Fold title={words.panels.notes} holds={block.notes && words.panelsBlock.written}>
        <TextRow
          label={words.panels.notes}
          value={block.notes}
          rows={2}
          placeholder={words.panels.notesHint}
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

export function boundOf(text: string, fits: (value: number) => boolean, otherwise: string) {
  const value = parseNumber(text, EIGHTS)
  return value.ok ? (fits(value.value) ? parsed(value.value) : refused(otherwise)) : value
}

/** What a fold holds in a few words; undefined where there are none. */
function held(values: readonly (string | false | undefined)[]): string | undefined {
  const told = values.filter((value) => value !== undefined && value !== false && value !== '')
  return told.length === 0 ? undefined : told.join(', ')
}
