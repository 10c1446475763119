import { plainMove } from '#engine/cadence/moves.ts'
import { Button } from '#ui/Button.tsx'
import { Field } from '#ui/Field.tsx'

interface Props {
  moves: readonly string[]
  onChange: (moves: readonly string[]) => void
}

/** Moves advised against by at least one training body (public position statements; common practice). Rooms differ, so none is on the list from the start. */
const CONTESTED = ['travel-back', 'press', 'jump', 'hovering', 'isolation', 'no hands', 'corner', 'pulse']

/** The moves this room does not do. Blocks that use one become findings; nothing is hidden or blocked. */
export function AvoidMoves({ moves, onChange }: Props) {
  const has = (name: string) => moves.some((move) => plainMove(move) === plainMove(name))
  const offers = CONTESTED.filter((name) => !has(name))
  return (
    <section className="setup-part" aria-label="moves to avoid">
      <h2>moves to avoid</h2>
      <p className="setup-quiet">
        A block that uses one is found, with another way to ride it. Some of these are advised against by a training body’s public position
        statement, others are daily bread in many rooms: the list is yours.
      </p>
      {moves.length > 0 && (
        <ul className="rules-moves">
          {moves.map((move, index) => (
            <li key={move}>
              {move}
              <Button tone="quiet" aria-label={`allow ${move}`} onClick={() => onChange(moves.toSpliced(index, 1))}>
                allow
              </Button>
            </li>
          ))}
        </ul>
      )}
      <Field
        label="avoid another move"
        placeholder="name of the move"
        value=""
        onCommit={(text) => {
          const name = text.trim()
          if (name === '') return null
          if (name.length > 120) return 'A name has at most 120 characters.'
          if (has(name)) return 'It is on the list.'
          onChange([...moves, name])
          return null
        }}
      />
      {offers.length > 0 && (
        <div className="setup-buttons rules-offers">
          {offers.map((name) => (
            <Button key={name} aria-label={`avoid ${name}`} onClick={() => onChange([...moves, name])}>
              {name}
            </Button>
          ))}
        </div>
      )}
    </section>
  )
}
