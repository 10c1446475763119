import type { Finding } from '#engine/report.ts'
import { countByPlace, type Filter, filtered, SEVERITIES } from '#features/drafting/findings/sorting.ts'
import { sectionName } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { Select } from '#ui/Select.tsx'
import { tell, words } from '#words/words.ts'

interface FindingFilterProps {
  findings: readonly Finding[]
  filter: Filter
  onFilter: (filter: Filter) => void
}

/** Narrows a long list by weight and by song, each with how many there are. */
export function FindingFilter({ findings, filter, onFilter }: FindingFilterProps) {
  const { checkList } = words
  const ride = useApp((state) => (state.received ?? state).ride)
  const here = filtered(findings, { ...filter, severity: 'all' })
  const counts = countByPlace(filtered(findings, { ...filter, place: 'everywhere' }))
  const sections = (ride?.sections ?? []).flatMap((section, index) => {
    const count = counts.get(section.id) ?? 0
    if (count === 0 && section.id !== filter.place) return []
    return [{ value: section.id, label: checkList.inSong({ place: index + 1, name: tell(sectionName(ride!, section)), count }) }]
  })
  return (
    <div className="finding-filter">
      <fieldset className="finding-kinds">
        <legend className="ui-hidden">{checkList.which}</legend>
        {KINDS.map((severity) => {
          const count = filtered(here, { severity, place: 'everywhere' }).length
          const pressed = filter.severity === severity
          return (
            <button
              key={severity}
              type="button"
              aria-pressed={pressed}
              disabled={count === 0 && !pressed}
              onClick={() => onFilter({ ...filter, severity })}
            >
              {severity === 'all' ? checkList.all({ count }) : checkList.counted({ severity, count })}
            </button>
          )
        })}
      </fieldset>
      <Select
        label={checkList.song}
        hideLabel
        value={filter.place}
        choices={[
          { value: 'everywhere', label: checkList.allSongs },
          ...(counts.has('ride') || filter.place === 'ride'
            ? [{ value: 'ride', label: checkList.wholeRide({ count: counts.get('ride') ?? 0 }) }]
            : []),
          ...sections,
        ]}
        onChange={(place) => onFilter({ ...filter, place })}
      />
    </div>
  )
}

const KINDS: readonly Filter['severity'][] = ['all', ...SEVERITIES]
