import { plainMove } from '#engine/cadence/moves.ts'
import { Button } from '#ui/Button.tsx'
import { Field } from '#ui/Field.tsx'
import { words } from '#words/words.ts'

interface Props {
  moves: readonly string[]
  onChange: (moves: readonly string[]) => void
}

/** Moves advised against by at least one training body (public position statements; common practice). Studios differ, so none is on the list from the start. */
const CONTESTED = ['travel-back', 'press', 'jump', 'hovering', 'isolation', 'no hands', 'corner', 'pulse'] as const

const LONGEST = 120

/** A move by its usual name in the language of the page; another as it was named. */
function told(name: string): string {
  const move = CONTESTED.find((each) => each === name)
  return move ? words.rules.move({ move }) : name
}

/** The moves this studio does not do. Blocks that use one are listed by the checks; nothing is hidden or blocked. */
export function AvoidMoves({ moves, onChange }: Props) {
  const has = (name: string) => moves.some((move) => plainMove(move) === plainMove(name))
  const offers = CONTESTED.filter((name) => !has(name))
  return (
    <section className="setup-part" aria-label={words.rules.avoidHeading} data-rule="avoidMoves">
      <h2>{words.rules.avoidHeading}</h2>
      <p className="setup-quiet">{words.rules.avoidAbout}</p>
      {moves.length > 0 && (
        <ul className="rules-moves">
          {moves.map((move, index) => (
            <li key={move}>
              {told(move)}
              <Button
                tone="quiet"
                aria-label={words.rules.allowMove({ move: told(move) })}
                onClick={() => onChange(moves.toSpliced(index, 1))}
              >
                {words.rules.allow}
              </Button>
            </li>
          ))}
        </ul>
      )}
      <Field
        label={words.rules.avoidAnother}
        placeholder={words.rules.avoidPlaceholder}
        value=""
        onCommit={(text) => {
          const name = text.trim()
          if (name === '') return null
          if (name.length > LONGEST) return words.rules.nameTooLong({ most: LONGEST })
          if (has(name)) return words.rules.alreadyListed
          onChange([...moves, name])
          return null
        }}
      />
      {offers.length > 0 && (
        <div className="setup-buttons rules-offers">
          {offers.map((name) => (
            <Button key={name} aria-label={words.rules.avoidMove({ move: told(name) })} onClick={() => onChange([...moves, name])}>
              {told(name)}
            </Button>
          ))}
        </div>
      )}
    </section>
  )
}
