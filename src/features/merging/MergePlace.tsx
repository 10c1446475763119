import { useMemo } from 'react'
import { computeRide } from '#engine/computeRide.ts'
import type { Difference } from '#plan/merge/difference.ts'
import type { Merging } from '#store/mergeSlice.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Disclosure } from '#ui/Disclosure.tsx'
import { words } from '#words/words.ts'
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
        <h1>{words.merging.title({ title: mine.title || words.names.untitled })}</h1>
        <p>{situation(merging)}</p>
      </header>
      <Outcome merging={merging} before={before} after={after} />

      {conflicts.length > 0 && (
        <section aria-labelledby="merging-conflicts">
          <div className="merging-section-head">
            <h2 id="merging-conflicts">{merge.based ? words.merging.conflicts : words.merging.different}</h2>
            <span>{words.merging.toResolve({ count: conflicts.length })}</span>
            <Button onClick={() => chooseAll('mine')}>{words.merging.allMine}</Button>
            <Button onClick={() => chooseAll('theirs')}>{words.merging.allTheirs}</Button>
          </div>
          {bySection(conflicts, rides).map((group) => (
            <div key={group.sectionId ?? ''} className="merging-group">
              <h3>{group.name}</h3>
              {group.entries.map(({ difference, ...about }) => (
                <ConflictCard
                  key={difference.id}
                  difference={difference}
                  told={about}
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
          <h2 id="merging-taken">{merge.based ? words.merging.changedByThem : words.merging.onlyTheirs}</h2>
          <span>
            {taken.length === 0 ? words.merging.nothing : words.merging.used({ used: taken.filter(isTaken).length, of: taken.length })}
          </span>
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
          <h2 id="merging-derived">{words.merging.effect}</h2>
        </div>
        <DerivedChanges before={before} after={after} ride={merge.merged} />
      </section>

      {own.length > 0 && (
        <Disclosure
          summary={merge.based ? words.merging.changedByMe({ count: own.length }) : words.merging.onlyMine({ count: own.length })}
        >
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
  if (inWindows) return words.merging.inWindows
  const title = theirs.title || words.names.untitled
  if (!base) return words.merging.unrelated({ title })
  return merge.conflicts.length + merge.taken.length === 0 ? words.merging.nothingNew({ title }) : words.merging.related
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
    <section className="merging-outcome" aria-label={words.merging.outcome}>
      <CurveSketch report={after} beside={before} label={words.merging.curve} />
      <p role="status" data-testid="merge-total">
        <b>{words.merging.lasts({ seconds: after.overall.total })}</b> · {words.merging.besideMine({ mine: before.overall.total, slack })}
      </p>
      <div className="merging-actions">
        <Button tone="solid" onClick={() => void take()}>
          {merging.merge.merged === merging.mine ? words.merging.keepMine : words.merging.useChanges}
        </Button>
        <Button onClick={cancel}>{words.merging.cancel}</Button>
      </div>
    </section>
  )
}
