import type { Finding } from '#engine/report.ts'
import { countByPlace, type Filter, filtered, SEVERITIES } from '#features/drafting/findings/sorting.ts'
import { nameOfSection } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { Select } from '#ui/Select.tsx'

interface FindingFilterProps {
  findings: readonly Finding[]
  filter: Filter
  onFilter: (filter: Filter) => void
}

/** Narrows a long list by weight and by song, each with how many there are. */
export function FindingFilter({ findings, filter, onFilter }: FindingFilterProps) {
  const ride = useApp((state) => (state.received ?? state).ride)
  const here = filtered(findings, { ...filter, severity: 'all' })
  const counts = countByPlace(filtered(findings, { ...filter, place: 'everywhere' }))
  const sections = (ride?.sections ?? []).flatMap((section, index) => {
    const count = counts.get(section.id) ?? 0
    if (count === 0 && section.id !== filter.place) return []
    return [{ value: section.id, label: `${index + 1}. ${nameOfSection(ride!, section)} (${count})` }]
  })
  return (
    <div className="finding-filter">
      <fieldset className="finding-kinds">
        <legend className="ui-hidden">which findings</legend>
        {KINDS.map(({ severity, say }) => {
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
              {say(count)}
            </button>
          )
        })}
      </fieldset>
      <Select
        label="song"
        hideLabel
        value={filter.place}
        choices={[
          { value: 'everywhere', label: 'in every song' },
          ...(counts.has('ride') || filter.place === 'ride'
            ? [{ value: 'ride', label: `the ride as a whole (${counts.get('ride') ?? 0})` }]
            : []),
          ...sections,
        ]}
        onChange={(place) => onFilter({ ...filter, place })}
      />
    </div>
  )
}

const KINDS: readonly { severity: Filter['severity']; say: (count: number) => string }[] = [
  { severity: 'all', say: (count) => `all ${count}` },
  ...SEVERITIES.map(({ severity, words }) => ({ severity, say: (count: number) => `${count} ${words}` })),
]
