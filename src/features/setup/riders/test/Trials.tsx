import { useRef, useState } from 'react'
import type { Rider, Trial } from '#plan/riderModel.ts'
import { Button } from '#ui/Button.tsx'
import { NumberField } from '#ui/NumberField.tsx'
import { useAfterDrawing } from '#ui/useAfterDrawing.ts'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Seconds, Watts } from '#units/units.ts'
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
            <th scope="col">held for</th>
            <th scope="col">mean watts</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {trials.map((trial, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two trials may be alike, and their fields hold nothing of their own
            <tr key={index}>
              <td>
                <NumberField
                  label={`length of trial ${index + 1}`}
                  hideLabel
                  value={trial.seconds}
                  format={formatClock}
                  parse={parseLength}
                  onCommit={(seconds) => {
                    if (seconds !== trial.seconds) put(trials.with(index, { ...trial, seconds }))
                    return null
                  }}
                />
              </td>
              <td>
                <NumberField
                  label={`watts of trial ${index + 1}`}
                  hideLabel
                  value={trial.watts}
                  format={(watts) => formatNumber(watts, 1)}
                  parse={parseTrialWatts}
                  onCommit={(watts) => {
                    if (watts !== trial.watts) put(trials.with(index, { ...trial, watts }))
                    return null
                  }}
                />
              </td>
              <td>
                <Button tone="quiet" aria-label={`remove trial ${index + 1}`} onClick={() => put(trials.toSpliced(index, 1))}>
                  remove
                </Button>
              </td>
            </tr>
          ))}
          {trials.length < MOST && <NewTrial onAdd={(trial) => put([...trials, trial])} />}
        </tbody>
      </table>
      <p className="setup-quiet">
        Each to exhaustion, rested, best on days of their own: one of about 3 minutes and one of 12 at the least. Watts from a calibrated
        bike.
      </p>
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
          label="length of a new trial"
          hideLabel
          placeholder="3:00"
          value={seconds}
          format={(held) => (held === null ? '' : formatClock(held))}
          parse={(text) => (text.trim() === '' ? { ok: true, value: null } : parseLength(text))}
          onCommit={(next) => {
            took({ seconds: next, watts })
            return null
          }}
        />
      </td>
      <td>
        <NumberField<Watts | null>
          label="watts of a new trial"
          hideLabel
          placeholder="260"
          value={watts}
          format={(held) => (held === null ? '' : formatNumber(held, 1))}
          parse={(text) => (text.trim() === '' ? { ok: true, value: null } : parseTrialWatts(text))}
          onCommit={(next) => {
            took({ seconds, watts: next })
            return null
          }}
        />
      </td>
      <td className="setup-quiet">another</td>
    </tr>
  )
}
