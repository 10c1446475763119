import { useState } from 'react'
import type { RideReport } from '#engine/report.ts'
import { fileStem } from '#plan/document/fileStem.ts'
import type { Ride } from '#plan/model.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Disclosure } from '#ui/Disclosure.tsx'
import { Field } from '#ui/Field.tsx'
import { saveTextFile } from '#ui/saveTextFile.ts'
import { parseWallClock } from '#units/parseWallClock.ts'
import { words } from '#words/words.ts'
import { EXPORTS, type ExportId, type MakeExport } from './exportKinds.ts'

interface ExportPartProps {
  ride: Ride
  report: RideReport
  makeExport: MakeExport
  /** The day of today, "2026-11-25". */
  today: string
}

/** The ride as files for other programs, each with the name it gets. */
export function ExportPart({ ride, report, makeExport, today }: ExportPartProps) {
  const announce = useApp((state) => state.announce)
  const notify = useApp((state) => state.notify)
  const [day, setDay] = useState(today)
  const [startsAt, setStartsAt] = useState(ride.startsAt ?? '18:00')
  const stem = fileStem(ride.title)

  const save = async (id: ExportId, name: string) => {
    try {
      const { data, type } = await makeExport(id, ride, report, { day, startsAt })
      saveTextFile(name, data, type)
      announce(words.sheet.exported({ file: name }))
    } catch (error) {
      notify({
        kind: 'problem',
        sentence: words.sheet.notExported({ file: name }),
        details: [error instanceof Error ? error.message : String(error)],
      })
    }
  }
  const commitClock = (text: string) => {
    const read = parseWallClock(text)
    if (!read.ok) return read.problem
    setStartsAt(read.value)
    return null
  }
  return (
    <Disclosure className="sheet-more" summary={words.sheet.export}>
      <ul className="sheet-exports">
        {EXPORTS.map(({ id, ending }) => {
          const name = `${stem}.${ending}`
          return (
            <li key={id}>
              <Button onClick={() => void save(id, name)} aria-describedby={`export-${id}`}>
                {words.sheet.exportName({ id })}
              </Button>
              <p id={`export-${id}`}>
                <b>{name}</b>
                {words.sheet.exportHint({ id })}
              </p>
            </li>
          )
        })}
      </ul>
      <div className="sheet-export-day">
        <label>
          {words.sheet.exportDay}
          <input
            type="date"
            value={day}
            required
            onChange={(event) => event.currentTarget.value !== '' && setDay(event.currentTarget.value)}
          />
        </label>
        <Field label={words.sheet.exportTime} value={startsAt} onCommit={commitClock} />
      </div>
    </Disclosure>
  )
}
