import type { PlayedBlock } from '#engine/played.ts'
import { usePlayed } from '#features/drafting/panel/played.ts'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import type { Block } from '#plan/model.ts'
import type { Choice } from '#ui/Select.tsx'

type Lead = NonNullable<Block['lead']>

const LEADS: readonly Choice<Lead>[] = [
  { value: 'keep', label: 'keep' },
  { value: 'swap', label: 'swap' },
  { value: 'left', label: 'left' },
  { value: 'right', label: 'right' },
]

/** What happens to the lead foot at the block's first count, and which foot lands on it. */
export function LeadFootRow({ blockId, lead, onChange }: { blockId: string; lead: Block['lead']; onChange: (lead: Lead) => void }) {
  const played = usePlayed(blockId)
  return (
    <>
      <SelectRow label="lead foot" value={lead ?? 'keep'} choices={LEADS} onChange={onChange} />
      {played && <p className="panel-beside">{sayFoot(played)}</p>}
    </>
  )
}

function sayFoot({ foot, footSpoken, strikesPerBeat }: PlayedBlock): string {
  if (foot !== null) return `${foot} lands on the one${footSpoken ? ', said to riders' : ''}`
  return strikesPerBeat === null ? 'no lead foot off the beat' : 'no foot lands on the one'
}
