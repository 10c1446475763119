import { boundOf } from '#features/drafting/panel/block/MoreFields.tsx'
import { CheckRow } from '#features/drafting/panel/rows/CheckRow.tsx'
import { Fold } from '#features/drafting/panel/rows/Fold.tsx'
import { MixedQuantityRow } from '#features/drafting/panel/rows/MixedQuantityRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import type { BlockPatch } from '#plan/commands/patchBlocks.ts'
import type { Block } from '#plan/model.ts'
import { parsed } from '#units/parsed.ts'
import { words } from '#words/words.ts'
import type { EachBlock } from './eachBlock.ts'
import { differ, sharedOf } from './sharedOf.ts'

/** What of several blocks is rarely changed: options and feel, water, walk and all out, locks and bounds, notes. */
export function BlocksMore({ each: { blocks, songs, edit } }: { each: EachBlock }) {
  const { panels, panelsBlock } = words
  const text = (label: string, read: (block: Block) => string | undefined, write: (text: string | undefined) => BlockPatch, rest = {}) => (
    <TextRow
      label={label}
      value={sharedOf(blocks, (block) => read(block) ?? '') ?? undefined}
      placeholder={differ(blocks, read) ? panels.mixed : ''}
      onChange={(next) => edit(write(next))}
      {...rest}
    />
  )
  const check = (label: string, says: string, field: 'water' | 'walk' | 'allOut' | 'locked') => (
    <CheckRow
      label={label}
      says={says}
      checked={blocks.every((block) => block[field])}
      mixed={differ(blocks, (block) => block[field] === true)}
      onChange={(on) => edit({ [field]: on || undefined })}
    />
  )
  const bound = (label: string, field: 'minEights' | 'maxEights', fits: (value: number, block: Block) => boolean, otherwise: string) => (
    <MixedQuantityRow<number | typeof ANY>
      label={label}
      value={sharedOf(blocks, (block) => block[field] ?? ANY)}
      unit={panels.groups({ six: false })}
      placeholder={panelsBlock.anyLength}
      format={(value) => (value === ANY ? '' : String(value))}
      parse={(typed) =>
        typed.trim() === '' ? parsed(ANY) : boundOf(typed, (value) => blocks.every((block) => fits(value, block)), otherwise)
      }
      onChange={(value) => edit({ [field]: value === ANY ? undefined : value })}
    />
  )
  const held = (fields: Partial<Record<keyof Block, string>>) => {
    const names = Object.entries(fields).flatMap(([field, name]) => (blocks.some((block) => block[field as keyof Block]) ? [name] : []))
    return names.length === 0 ? undefined : names.join(', ')
  }
  return (
    <>
      <Fold
        title={panelsBlock.options}
        holds={held({ easier: panelsBlock.easier, harder: panelsBlock.harder, feel: panelsBlock.feelsLike })}
        closed
      >
        {text(
          panelsBlock.easier,
          ({ easier }) => easier?.text,
          (next) => ({ easier: next === undefined ? undefined : { text: next } }),
        )}
        {text(
          panelsBlock.harder,
          ({ harder }) => harder?.text,
          (next) => ({ harder: next === undefined ? undefined : { text: next } }),
        )}
        {text(
          panelsBlock.feelsLike,
          ({ feel }) => feel,
          (feel) => ({ feel }),
        )}
      </Fold>
      <Fold
        title={panelsBlock.waterWalkAllOut}
        holds={held({ water: panelsBlock.water, walk: panelsBlock.walk, allOut: panelsBlock.allOut })}
        closed
      >
        {check(panelsBlock.water, panelsBlock.waterSays, 'water')}
        {check(panelsBlock.walk, panelsBlock.walkSays, 'walk')}
        {check(panelsBlock.allOut, panelsBlock.allOutSays, 'allOut')}
      </Fold>
      <Fold
        title={panelsBlock.lockAndFitting}
        holds={held({ locked: panelsBlock.locked, minEights: panelsBlock.fitLeast, maxEights: panelsBlock.fitMost })}
        closed
      >
        {check(panelsBlock.locked, panelsBlock.lockedSays, 'locked')}
        {songs.every((song) => song?.grid) && (
          <>
            {bound(panelsBlock.fitLeast, 'minEights', (value, { maxEights = value }) => value <= maxEights, panelsBlock.leastOverMost)}
            {bound(panelsBlock.fitMost, 'maxEights', (value, { minEights = value }) => value >= minEights, panelsBlock.mostUnderLeast)}
          </>
        )}
      </Fold>
      <Fold title={panels.notes} holds={held({ notes: panelsBlock.written })} closed>
        {text(
          panels.notes,
          ({ notes }) => notes,
          (notes) => ({ notes }),
          { rows: 2, longest: 2000 },
        )}
      </Fold>
    </>
  )
}

const ANY = 'any'
