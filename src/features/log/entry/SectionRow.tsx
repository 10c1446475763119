import type { Outcome, TaughtSection } from '#plan/kept/taught.ts'
import { Disclosure } from '#ui/Disclosure.tsx'
import { Field } from '#ui/Field.tsx'
import { Select } from '#ui/Select.tsx'
import { clock } from '#words/forms.ts'
import { words } from '#words/words.ts'

interface Props {
  section: TaughtSection
  /** As the entry was opened: a song taken back from skipped is as long as it was. */
  planned: TaughtSection
  number: number
  onChange: (section: TaughtSection) => void
}

const outcomes = () =>
  (['taught', 'changed', 'skipped'] as const).map((outcome: Outcome) => ({ value: outcome, label: words.log.outcome({ outcome }) }))

const stars = () => [0, 1, 2, 3, 4, 5].map((count) => ({ value: count === 0 ? '' : String(count), label: words.log.stars({ count }) }))

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
        <span>{clock(section.seconds)}</span>
      </p>
      <Select label={words.log.outcomeOf({ name })} hideLabel value={section.outcome} choices={outcomes()} onChange={setOutcome} />
      <Select
        label={words.log.starsOf({ name })}
        hideLabel
        value={section.stars === undefined ? '' : String(section.stars)}
        choices={stars()}
        onChange={(count) => void change({ stars: count === '' ? undefined : Number(count) })}
      />
      <Field
        className="log-section-change"
        label={words.log.changeOf({ name })}
        hideLabel
        value={section.change ?? ''}
        placeholder={words.log.changePlaceholder}
        onCommit={(text) =>
          text.length > 300 ? words.log.tooLong({ most: 300 }) : change({ change: text.trim() === '' ? undefined : text.trim() })
        }
      />
      {section.outcome !== 'skipped' && section.blocks.length > 0 && (
        <Disclosure className="log-section-blocks" summary={words.log.blocks({ skipped })}>
          {section.blocks.map((block, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a block of an entry is its place
            <label key={index} className="log-block">
              <input type="checkbox" checked={!block.skipped} onChange={() => toggleBlock(index)} />
              {words.log.block(block)}
            </label>
          ))}
        </Disclosure>
      )}
    </li>
  )
}

/** A song skipped on the screen has no length of its own: its blocks say how long it would have been. */
const lengthOf = ({ seconds, blocks }: TaughtSection): number => seconds || blocks.reduce((sum, block) => sum + block.seconds, 0)
