import type { Outcome, TaughtSection } from '#plan/kept/taught.ts'
import { Disclosure } from '#ui/Disclosure.tsx'
import { Field } from '#ui/Field.tsx'
import { type Choice, Select } from '#ui/Select.tsx'
import { formatClock } from '#units/formatClock.ts'
import { plural } from '#units/plural.ts'

interface Props {
  section: TaughtSection
  /** As the entry was opened: a song taken back from skipped is as long as it was. */
  planned: TaughtSection
  number: number
  onChange: (section: TaughtSection) => void
}

const OUTCOME_CHOICES: readonly Choice<Outcome>[] = [
  { value: 'taught', label: 'as planned' },
  { value: 'changed', label: 'changed' },
  { value: 'skipped', label: 'skipped' },
]
const STAR_CHOICES: readonly Choice<string>[] = [
  { value: '', label: 'no stars' },
  ...[1, 2, 3, 4, 5].map((stars) => ({ value: String(stars), label: plural(stars, 'star') })),
]

/** What became of one song. */
export function SectionRow({ section, planned, number, onChange }: Props) {
  const change = (patch: Partial<TaughtSection>): null => {
    onChange({ ...section, ...patch })
    return null
  }
  const setOutcome = (outcome: Outcome) =>
    void change({ outcome, seconds: outcome === 'skipped' ? 0 : section.seconds || lengthOf(planned) })
  const toggleBlock = (index: number) => {
    const blocks = section.blocks.map((block, i) => (i === index ? { ...block, skipped: block.skipped ? undefined : true } : block))
    onChange({ ...section, blocks, outcome: section.outcome === 'skipped' ? 'skipped' : 'changed' })
  }
  const skipped = section.blocks.filter((block) => block.skipped).length
  const name = `${number} ${section.title}`
  return (
    <li className="log-section" data-outcome={section.outcome}>
      <p className="log-section-name">
        <b>{name}</b>
        {section.artist && <span>{section.artist}</span>}
        <span>{formatClock(section.seconds)}</span>
      </p>
      <Select label={`${name}: what became of it`} hideLabel value={section.outcome} choices={OUTCOME_CHOICES} onChange={setOutcome} />
      <Select
        label={`${name}: stars`}
        hideLabel
        value={section.stars === undefined ? '' : String(section.stars)}
        choices={STAR_CHOICES}
        onChange={(stars) => void change({ stars: stars === '' ? undefined : Number(stars) })}
      />
      <Field
        className="log-section-change"
        label={`${name}: what was otherwise`}
        hideLabel
        value={section.change ?? ''}
        placeholder="what was otherwise, how it went down"
        onCommit={(text) =>
          text.length > 300 ? 'Keep it under 300 characters.' : change({ change: text.trim() === '' ? undefined : text.trim() })
        }
      />
      {section.outcome !== 'skipped' && section.blocks.length > 0 && (
        <Disclosure className="log-section-blocks" summary={skipped === 0 ? 'blocks' : `blocks, ${skipped} skipped`}>
          {section.blocks.map((block, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a block of an entry is its place
            <label key={index} className="log-block">
              <input type="checkbox" checked={!block.skipped} onChange={() => toggleBlock(index)} />
              {block.name}, {formatClock(block.seconds)}
            </label>
          ))}
        </Disclosure>
      )}
    </li>
  )
}

/** A song skipped on the screen has no length of its own: its blocks say how long it would have been. */
const lengthOf = ({ seconds, blocks }: TaughtSection): number => seconds || blocks.reduce((sum, block) => sum + block.seconds, 0)
