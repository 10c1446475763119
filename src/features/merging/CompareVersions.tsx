import { useEffect, useMemo, useState } from 'react'
import { computeRide } from '#engine/computeRide.ts'
import type { VersionHead } from '#plan/kept/version.ts'
import { mergeRides } from '#plan/merge/mergeRides.ts'
import type { Ride } from '#plan/model.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Dialog } from '#ui/Dialog.tsx'
import { Select } from '#ui/Select.tsx'
import { words } from '#words/words.ts'
import { bySection } from './bySection.ts'
import { ChangeRow } from './ChangeRow.tsx'
import { CurveSketch } from './CurveSketch.tsx'
import { DerivedChanges } from './DerivedChanges.tsx'
import { titleOf, whenOf } from './versionWords.ts'
import { sayDifference } from './words/sayDifference.ts'

interface Props {
  /** Id of the version the comparison starts from; null while nothing is compared. */
  from: string | null
  versions: readonly VersionHead[]
  onClose: () => void
}

/** The ride as it is open. */
const NOW = 'now'

/** Any two versions side by side, block by block; the ride as it stands now is one of them. */
export function CompareVersions({ from, versions, onClose }: Props) {
  return (
    <Dialog open={from !== null} title={words.merging.compareVersions} onClose={onClose} wide>
      {from !== null && <Comparison start={from} versions={versions} />}
    </Dialog>
  )
}

function Comparison({ start, versions }: { start: string; versions: readonly VersionHead[] }) {
  const [from, setFrom] = useState(start)
  const [to, setTo] = useState(NOW)
  const [before, after] = [useVersion(from), useVersion(to)]
  const choices = [
    { value: NOW, label: words.merging.asItIsNow },
    ...versions.map((version) => ({
      value: version.id,
      label: words.merging.versionAt({ version: titleOf(version), at: whenOf(version) }),
    })),
  ]
  return (
    <div className="versions-compare">
      <div className="versions-choose">
        <Select label={words.merging.from} value={from} choices={choices} onChange={setFrom} />
        <Select label={words.merging.to} value={to} choices={choices} onChange={setTo} />
      </div>
      {before && after ? <Changes before={before} after={after} /> : <p>{words.merging.opening}</p>}
    </div>
  )
}

/** The ride of a version; null while it is read. */
function useVersion(id: string): Ride | null {
  const store = useAppStore()
  const now = useApp((state) => state.ride)
  const [read, setRead] = useState<{ id: string; ride: Ride } | null>(null)
  useEffect(() => {
    let gone = false
    if (id !== NOW)
      void store
        .getState()
        .openVersion(id)
        .then((version) => !gone && version && setRead({ id, ride: version.ride }))
    return () => {
      gone = true
    }
  }, [store, id])
  if (id === NOW) return now
  return read?.id === id ? read.ride : null
}

function Changes({ before, after }: { before: Ride; after: Ride }) {
  const reports = useMemo(() => ({ before: computeRide(before), after: computeRide(after) }), [before, after])
  const told = useMemo(() => {
    const { own: changes, merged } = mergeRides(before, after, before)
    const reportsOf = { mine: reports.after, theirs: reports.before }
    const telling = { base: before, mine: after, theirs: before, bike: merged.bike, reports: reportsOf }
    return changes.map((difference) => ({ ...sayDifference(difference, telling), difference }))
  }, [before, after, reports])
  if (told.length === 0) return <p>{words.merging.same}</p>
  return (
    <>
      <CurveSketch report={reports.after} beside={reports.before} label={words.merging.curveBefore} />
      {bySection(told, [after, before]).map((group) => (
        <div key={group.sectionId ?? ''} className="merging-group">
          <h3>{group.name}</h3>
          {group.entries.map(({ difference, at, where, what, base, mine }) => {
            const values = difference.kind === 'added' || difference.kind === 'deleted' ? {} : { before: base, after: mine }
            return <ChangeRow key={difference.id} at={at} where={where} what={what} {...values} />
          })}
        </div>
      ))}
      <h3>{words.merging.effect}</h3>
      <DerivedChanges before={reports.before} after={reports.after} ride={after} />
    </>
  )
}
