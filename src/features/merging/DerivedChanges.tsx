import { derivedChanges } from '#engine/changes/derivedChanges.ts'
import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import { findBlock, findSection } from '#plan/places.ts'
import { Disclosure } from '#ui/Disclosure.tsx'
import { tell, words } from '#words/words.ts'
import { ChangeRow } from './ChangeRow.tsx'
import { sayDerived, sayFigure } from './words/sayDerived.ts'

interface Props {
  before: RideReport
  after: RideReport
  /** The ride after. */
  ride: Ride
}

/** What nobody wrote but what follows: figures of the ride first, then calls, feet, starts and findings. */
export function DerivedChanges({ before, after, ride }: Props) {
  const changes = derivedChanges(before, after)
  const figures = changes.flatMap((change) => (change.kind === 'figure' ? (sayFigure(change) ?? []) : []))
  const others = changes.filter((change) => change.kind !== 'figure').toSorted((a, b) => a.at - b.at)
  if (figures.length + others.length === 0) return <p>{words.merging.noEffect}</p>
  return (
    <>
      {figures.map(({ what, ...values }) => (
        <ChangeRow key={what} what={what} {...values} />
      ))}
      {others.length > 0 && (
        <Disclosure summary={words.merging.moreByBlock({ count: others.length })} open={others.length <= 12}>
          {others.map((change) => (
            <ChangeRow key={keyOf(change)} at={change.at} where={whereOf(change, ride)} {...sayDerived(change)} />
          ))}
        </Disclosure>
      )}
    </>
  )
}

type Change = Exclude<ReturnType<typeof derivedChanges>[number], { kind: 'figure' }>

const keyOf = (change: Change): string =>
  `${change.kind} ${'blockId' in change ? change.blockId : 'sectionId' in change ? change.sectionId : change.findingId}`

function whereOf(change: Change, ride: Ride): string | undefined {
  if ('blockId' in change) {
    const block = findBlock(ride, change.blockId)?.block
    return block && tell(itemName(block))
  }
  const section = 'sectionId' in change ? findSection(ride, change.sectionId) : undefined
  return section && tell(sectionName(ride, section))
}
