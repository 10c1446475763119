import { useMemo } from 'react'
import { computeRide } from '#engine/computeRide.ts'
import type { Difference } from '#plan/merge/difference.ts'
import type { Merging } from '#store/mergeSlice.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Disclosure } from '#ui/Disclosure.tsx'
import { formatClock } from '#units/formatClock.ts'
import { bySection } from './bySection.ts'
import { ChangeRow } from './ChangeRow.tsx'
import { ConflictCard } from './ConflictCard.tsx'
import { CurveSketch } from './CurveSketch.tsx'
import { DerivedChanges } from './DerivedChanges.tsx'
import { sayDifference, type Telling, type Told } from './words/sayDifference.ts'
import './merging.css'

/** A ride that came back beside one's own: what changed, what has to be decided, and what follows. */
export function MergePlace() {
  const merging = useApp((state) => state.merging)
  return merging && <Comparison merging={merging} />
}

type Entry = Told & { difference: Difference }

function Comparison({ merging }: { merging: Merging }) {
  const { base, mine, theirs, merge } = merging
  const chooseSide = useApp((state) => state.chooseSide)
  const chooseAll = useApp((state) => state.chooseAll)
  const before = useMemo(() => computeRide(mine), [mine])
  const reports = useMemo(() => ({ mine: before, theirs: computeRide(theirs) }), [before, theirs])
  const after = useMemo(() => computeRide(merge.merged), [merge.merged])
  const telling: Telling = { base, mine, theirs, bike: merge.merged.bike, reports }
  const told = (differences: readonly Difference[]): Entry[] =>
    differences.map((difference) => ({ ...sayDifference(difference, telling), difference }))
  const [conflicts, taken, own] = [told(merge.conflicts), told(merge.taken), told(merge.own)]
  const rides = [mine, theirs]

  return (
    <div className="merging">
      <header className="merging-head">
        <h1>What changed in “{mine.title || 'untitled ride'}”</h1>
        <p>{situation(merging)}</p>
      </header>
      <Outcome merging={merging} before={before} after={after} />

      {conflicts.length > 0 && (
        <section aria-labelledby="merging-conflicts">
          <div className="merging-section-head">
            <h2 id="merging-conflicts">{merge.based ? 'changed by both' : 'different'}</h2>
            <span>{conflicts.length} to decide</span>
            <Button onClick={() => chooseAll('mine')}>mine in all</Button>
            <Button onClick={() => chooseAll('theirs')}>theirs in all</Button>
          </div>
          {bySection(conflicts, rides).map((group) => (
            <div key={group.sectionId ?? ''} className="merging-group">
              <h3>{group.name}</h3>
              {group.entries.map(({ difference, ...words }) => (
                <ConflictCard
                  key={difference.id}
                  difference={difference}
                  told={words}
                  merging={merging}
                  report={after}
                  onChoose={(side) => chooseSide(difference.id, side)}
                />
              ))}
            </div>
          ))}
        </section>
      )}

      <section aria-labelledby="merging-taken">
        <div className="merging-section-head">
          <h2 id="merging-taken">{merge.based ? 'changed by them' : 'only in theirs'}</h2>
          <span>{taken.length === 0 ? 'nothing' : `${taken.filter(isTaken).length} of ${taken.length} taken`}</span>
        </div>
        {bySection(taken, rides).map((group) => (
          <div key={group.sectionId ?? ''} className="merging-group">
            <h3>{group.name}</h3>
            {group.entries.map((entry) => (
              <label key={entry.difference.id} className="merging-take">
                <input
                  type="checkbox"
                  checked={isTaken(entry)}
                  onChange={(event) => chooseSide(entry.difference.id, event.target.checked ? 'theirs' : 'mine')}
                />
                <ChangeRow {...rowOf(entry, merge.based ? entry.base : entry.mine, entry.theirs)} />
              </label>
            ))}
          </div>
        ))}
      </section>

      <section aria-labelledby="merging-derived">
        <div className="merging-section-head">
          <h2 id="merging-derived">what follows from it</h2>
        </div>
        <DerivedChanges before={before} after={after} ride={merge.merged} />
      </section>

      {own.length > 0 && (
        <Disclosure summary={merge.based ? `changed by me alone: ${own.length}, kept` : `only in mine: ${own.length}, kept`}>
          {bySection(own, rides).map((group) => (
            <div key={group.sectionId ?? ''} className="merging-group">
              <h3>{group.name}</h3>
              {group.entries.map((entry) => (
                <ChangeRow key={entry.difference.id} {...rowOf(entry, merge.based ? entry.base : entry.theirs, entry.mine)} />
              ))}
            </div>
          ))}
        </Disclosure>
      )}
    </div>
  )
}

const isTaken = ({ difference }: Entry): boolean => difference.chosen === 'theirs'

/** What was done says itself what was before. */
function rowOf({ difference, at, where, what }: Entry, before: string, after: string) {
  const says = difference.kind === 'added' || difference.kind === 'deleted'
  return { at, where, what, ...(!says && { before, after }) }
}

function situation({ base, merge, theirs, inWindows }: Merging): string {
  if (inWindows)
    return 'This ride was changed in two windows at once. What only one of them changed is in it already; where both did, “mine” is this window and “theirs” the other.'
  const name = theirs.title || 'untitled ride'
  if (!base)
    return `No version that both rides were made from is kept here, so this only compares the two: nothing of “${name}” is taken unless you choose it.`
  if (merge.conflicts.length + merge.taken.length === 0) return `“${name}” holds nothing that yours does not have already.`
  return 'Yours and theirs are compared with the last version both of you had. What only one of you changed is kept; where both did, you decide.'
}

function Outcome({
  merging,
  before,
  after,
}: {
  merging: Merging
  before: ReturnType<typeof computeRide>
  after: ReturnType<typeof computeRide>
}) {
  const take = useApp((state) => state.takeMerge)
  const cancel = useApp((state) => state.cancelMerge)
  const { slack } = after.overall
  return (
    <section className="merging-outcome" aria-label="outcome">
      <CurveSketch report={after} beside={before} label="effort of the whole ride, mine as it is dashed" />
      <p role="status" data-testid="merge-total">
        <b>{formatClock(after.overall.total)}</b> long, mine is {formatClock(before.overall.total)};{' '}
        {slack >= 0 ? `${formatClock(slack)} to spare` : `${formatClock(-slack)} over the slot`}
      </p>
      <div className="merging-actions">
        <Button tone="solid" onClick={() => void take()}>
          {merging.merge.merged === merging.mine ? 'keep mine as it is' : 'take these changes'}
        </Button>
        <Button onClick={cancel}>cancel</Button>
      </div>
    </section>
  )
}
