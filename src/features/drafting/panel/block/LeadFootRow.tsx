import type { PlayedBlock } from '#engine/played.ts'
import { usePlayed } from '#features/drafting/panel/played.ts'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import type { Block } from '#plan/model.ts'
import type { Choice } from '#ui/Select.tsx'
import { words } from '#words/words.ts'

type Lead = NonNullable<Block['lead']>

export const leadChoices = (): readonly Choice<Lead>[] => [
  { value: 'keep', label: words.panelsBlock.keep },
  { value: 'swap', label: words.panelsBlock.swap },
  { value: 'left', label: words.names.foot({ foot: 'left' }) },
  { value: 'right', label: words.names.foot({ foot: 'right' }) },
]

/** What happens to the lead foot at the block's first count, and which foot lands on it. */
export function LeadFootRow({ blockId, lead, onChange }: { blockId: string; lead: Block['lead']; onChange: (lead: Lead) => void }) {
  const played = usePlayed(blockId)
  return (
    <>
      <SelectRow label={words.panels.leadFoot} value={lead ?? 'keep'} choices={leadChoices()} onChange={onChange} />
      {played && <p className="panel-beside">{sayFoot(played)}</p>}
    </>
  )
}

function sayFoot({ foot, footSpoken, strikesPerBeat }: PlayedBlock): string {
  if (foot !== null) return words.panelsBlock.landsOnOne({ foot, spoken: footSpoken })
  return strikesPerBeat === null ? words.panelsBlock.noFootOffBeat : words.panelsBlock.noFootOnOne
}
