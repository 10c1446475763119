import type { RideReport } from '#engine/report.ts'
import { itemName } from '#plan/names.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { clock } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'

/** Where a move is shown first, or where it comes again, with its posture there: a way to each. */
export function ShowingNote({ blockId }: { blockId: string }) {
  const store = useAppStore()
  const report = useApp((state) => state.shownReport)
  const showings = report && otherShowings(report, blockId)
  if (!showings) return null
  return (
    <p className="panel-beside">
      {showings.first ? words.panelsBlock.firstShown : words.panelsBlock.comesAgain}{' '}
      {showings.places.map(({ id, name, posture, at }, index) => (
        <span key={id}>
          {index > 0 && ', '}
          <button type="button" className="panel-link" onClick={() => store.getState().selectItem(id)}>
            {clock(at)} {name}
          </button>{' '}
          {posture}
        </span>
      ))}
    </p>
  )
}

/** Places named at most; a move of every song says no more by being listed. */
const MOST = 3

function otherShowings({ cues, blocks }: RideReport, blockId: string) {
  const here = (index: number) => blocks[index]!.block.id === blockId
  const showing = cues.showings.find(({ first, again }) => here(first) || again.some(here))
  if (!showing) return null
  const first = !here(showing.first)
  const others = first ? [showing.first] : showing.again.filter((index) => !here(index))
  const seen = new Set<string>()
  const places = others.flatMap((index) => {
    const { block, from } = blocks[index]!
    if (seen.has(block.id)) return []
    seen.add(block.id)
    return [{ id: block.id, name: tell(itemName(block)), posture: words.names.posture(block), at: from }]
  })
  return places.length === 0 ? null : { first, places: places.slice(0, MOST) }
}
