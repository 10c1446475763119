import { useRef, useState } from 'react'
import type { Rider, Trial } from '#plan/riderModel.ts'
import { Button } from '#ui/Button.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { useAfterDrawing } from '#ui/useAfterDrawing.ts'
import type { Seconds, Watts } from '#units/units.ts'
import { clock, number } from '#words/forms.ts'
import { words } from '#words/words.ts'
import { parseLength, parseTrialWatts } from './fields.ts'

interface Props {
  rider: Rider
  onChange: (rider: Rider) => void
}

/** Most trials a rider is kept with. */
const MOST = 20

/** All-out trials, each by how long it was held and its mean watts; a new one is added once both are typed. */
export function Trials({ rider, onChange }: Props) {
  const trials = rider.trials ?? []
  const put = (next: readonly Trial[]) => {
    const { trials: _before, ...others } = rider
    onChange(next.length === 0 ? others : { ...others, trials: [...next] })
  }
  return (
    <div>
      <table className="setup-table">
        <thead>
          <tr>
            <th scope="col">{words.riders.heldFor}</th>
            <th scope="col">{words.riders.averageWatts}</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {trials.map((trial, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two trials may be alike, and their fields hold nothing of their own
            <tr key={index}>
              <td>
                <NumberField
                  label={words.riders.lengthOfTrial({ place: index + 1 })}
                  hideLabel
                  value={trial.seconds}
                  format={clock}
                  parse={parseLength}
                  onCommit={(seconds) => {
                    if (seconds !== trial.seconds) put(trials.with(index, { ...trial, seconds }))
                    return null
                  }}
                />
              </td>
              <td>
                <NumberField
                  label={words.riders.wattsOfTrial({ place: index + 1 })}
                  hideLabel
                  value={trial.watts}
                  format={(watts) => number(watts, 1)}
                  parse={parseTrialWatts}
                  onCommit={(watts) => {
                    if (watts !== trial.watts) put(trials.with(index, { ...trial, watts }))
                    return null
                  }}
                />
              </td>
              <td>
                <Button
                  tone="quiet"
                  aria-label={words.riders.removeTrial({ place: index + 1 })}
                  onClick={() => put(trials.toSpliced(index, 1))}
                >
                  {words.riders.remove}
                </Button>
              </td>
            </tr>
          ))}
          {trials.length < MOST && <NewTrial onAdd={(trial) => put([...trials, trial])} />}
        </tbody>
      </table>
      <p className="setup-quiet">{words.riders.trialsHow}</p>
    </div>
  )
}

function NewTrial({ onAdd }: { onAdd: (trial: Trial) => void }) {
  const [seconds, setSeconds] = useState<Seconds | null>(null)
  const [watts, setWatts] = useState<Watts | null>(null)
  const row = useRef<HTMLTableRowElement>(null)
  const afterDrawing = useAfterDrawing()
  const took = (next: { seconds: Seconds | null; watts: Watts | null }) => {
    setSeconds(next.seconds)
    setWatts(next.watts)
    if (next.seconds === null || next.watts === null) return
    onAdd({ seconds: next.seconds, watts: next.watts })
    setSeconds(null)
    setWatts(null)
    // Whoever types on goes on with the next trial; whoever has left the row stays where they went.
    afterDrawing(() => {
      if (row.current?.contains(document.activeElement)) row.current.querySelector('input')?.focus()
    })
  }
  return (
    <tr ref={row}>
      <td>
        <NumberField<Seconds | null>
          label={words.riders.lengthOfNew}
          hideLabel
          placeholder="3:00"
          value={seconds}
          format={(held) => (held === null ? '' : clock(held))}
          parse={(text) => (text.trim() === '' ? { ok: true, value: null } : parseLength(text))}
          onCommit={(next) => {
            took({ seconds: next, watts })
            return null
          }}
        />
      </td>
      <td>
        <NumberField<Watts | null>
          label={words.riders.wattsOfNew}
          hideLabel
          placeholder="260"
          value={watts}
          format={(held) => (held === null ? '' : number(held, 1))}
          parse={(text) => (text.trim() === '' ? { ok: true, value: null } : parseTrialWatts(text))}
          onCommit={(next) => {
            took({ seconds, watts: next })
            return null
          }}
        />
      </td>
      <td className="setup-quiet">{words.riders.another}</td>
    </tr>
  )
}
