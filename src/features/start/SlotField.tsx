import { useState } from 'react'
import { NumberField } from '#ui/NumberField.tsx'
import { Segmented } from '#ui/Segmented.tsx'

const USUAL = ['20', '30', '45', '60'] as const
const OTHER = 'other'
/** Minutes a slot may have. */
const SHORTEST = 1
const LONGEST = 240

interface Props {
  minutes: number
  onChange: (minutes: number) => void
}

/** The booked slot: the usual four lengths, or any other in minutes. */
export function SlotField({ minutes, onChange }: Props) {
  const usual = USUAL.find((length) => Number(length) === minutes)
  const [other, setOther] = useState(usual === undefined)
  return (
    <div className="start-slot" data-other={other}>
      <Segmented
        label="slot in minutes"
        value={other ? OTHER : (usual ?? OTHER)}
        choices={[...USUAL, OTHER].map((value) => ({ value, label: value }))}
        onChange={(value) => {
          setOther(value === OTHER)
          if (value !== OTHER) onChange(Number(value))
        }}
      />
      {other && (
        <NumberField
          label="other length"
          unit="min"
          className="start-slot-other"
          inputMode="numeric"
          value={minutes}
          format={String}
          parse={parseMinutes}
          onCommit={(value) => {
            onChange(value)
            return null
          }}
          step={(value, direction, large) => Math.min(LONGEST, Math.max(SHORTEST, value + direction * (large ? 5 : 1)))}
        />
      )}
    </div>
  )
}

const WRONG = { ok: false, problem: `Write whole minutes from ${SHORTEST} to ${LONGEST}, such as 50.` } as const

/** Reads a slot in whole minutes: "50" or "50 min". */
function parseMinutes(text: string): { ok: true; value: number } | { ok: false; problem: string } {
  const [, digits] = /^\s*(\d{1,4})\s*(?:min|minutes|m)?\s*$/i.exec(text) ?? []
  const value = Number(digits)
  return digits !== undefined && value >= SHORTEST && value <= LONGEST ? { ok: true, value } : WRONG
}
