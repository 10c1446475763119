import { FactRow } from '#features/drafting/panel/rows/FactRow.tsx'
import { useApp } from '#store/useApp.ts'
import { formatEffort } from '#units/formatEffort.ts'
import './effort.css'

/** What the block asks of each modelled rider, to the nearest half level; the one the ride is judged for stands out. */
export function DemandRow({ blockId }: { blockId: string }) {
  const report = useApp((state) => state.shownReport)
  const index = report?.blocks.findIndex(({ block }) => block.id === blockId) ?? -1
  const asked = report?.riders.flatMap(({ rider, reference, demand }) => {
    const of = demand[index]
    return of
      ? [{ id: rider.id, name: rider.name.replace(/ rider$/, ''), reference, level: formatEffort(Math.round(of.mean * 2) / 2) }]
      : []
  })
  if (!asked || asked.length === 0) return null
  return (
    <FactRow label="demand">
      <ul className="panel-demand">
        {asked.map(({ id, name, reference, level }) => (
          <li key={id} data-reference={reference}>
            {name} {level}
          </li>
        ))}
      </ul>
    </FactRow>
  )
}
