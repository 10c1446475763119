import { FactRow } from '#features/drafting/panel/rows/FactRow.tsx'
import { shortName } from '#features/drafting/panel/shortName.ts'
import { useApp } from '#store/useApp.ts'
import { effort } from '#words/forms.ts'
import { words } from '#words/words.ts'
import './effort.css'

/** To the nearest half level. */
const halves = (level: number): string => effort(Math.round(level * 2) / 2)

/** What the block takes of each modeled rider and where nine of ten of them would lie; the one the ride is judged for stands out. */
export function DemandRow({ blockId }: { blockId: string }) {
  const report = useApp((state) => state.shownReport)
  const index = report?.blocks.findIndex(({ block }) => block.id === blockId) ?? -1
  const asked = report?.riders.flatMap(({ rider, reference, demand, band }) => {
    const of = demand[index]
    const [low, high] = [band.demand.low[index], band.demand.high[index]]
    if (!of || !low || !high) return []
    const range = [low, high].map(({ mean }) => halves(mean))
    return [{ id: rider.id, name: shortName(rider), reference, level: halves(of.mean), range: [...new Set(range)].join('–') }]
  })
  if (!asked || asked.length === 0) return null
  return (
    <FactRow label={words.panelsBlock.estimated}>
      <ul className="panel-demand">
        {asked.map(({ id, name, reference, level, range }) => (
          <li key={id} data-reference={reference}>
            {words.panelsBlock.aboutFor({ rider: name, level })} <span className="panel-quiet">{range}</span>
          </li>
        ))}
      </ul>
    </FactRow>
  )
}
