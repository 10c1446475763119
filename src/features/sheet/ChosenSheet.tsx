import type { ReactElement } from 'react'
import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { ChecklistPart } from './checklist/ChecklistPart.tsx'
import { ChecklistSheet } from './checklist/ChecklistSheet.tsx'
import type { SongClock } from './contents/contents.ts'
import type { Short } from './contents/shorthand.ts'
import { CARDS, COMPACT, LARGE, PHONE_SCREENS } from './jobs.ts'
import type { Paper } from './paging/paper.ts'
import { PhoneScan } from './phone/PhoneScan.tsx'
import { PlainSheet } from './plain/PlainSheet.tsx'
import type { SheetKind } from './sheets.ts'
import { SubstituteSheet } from './substitute/SubstituteSheet.tsx'
import { CueSheet } from './view/CueSheet.tsx'

interface ChosenSheetProps {
  kind: SheetKind
  ride: Ride
  report: RideReport
  paper: Paper
  songClock: SongClock
  /** Id of the leader it is made for; absent for both. */
  reader?: string
  /** Cards four on a page. */
  fourUp: boolean
  shorthand: readonly Short[]
  date: string
}

/** One sheet of the ride, with what belongs to it alone. */
export function ChosenSheet({ kind, fourUp, ...rest }: ChosenSheetProps): ReactElement {
  const { ride, report, paper, date } = rest
  switch (kind) {
    case 'compact':
      return <CueSheet kind="compact" job={COMPACT} {...rest} />
    case 'large':
      return <CueSheet kind="large" job={LARGE} {...rest} />
    case 'cards':
      return <CueSheet kind="cards" job={CARDS} fourUp={fourUp} {...rest} />
    case 'phone':
      return (
        <CueSheet kind="phone" job={PHONE_SCREENS} {...rest}>
          {(plan, parts) => <PhoneScan plan={plan} parts={parts} />}
        </CueSheet>
      )
    case 'substitute':
      return <SubstituteSheet {...{ ride, report, paper, date }} />
    case 'plain':
      return <PlainSheet {...{ ride, report, paper, date }} />
    case 'checklist':
      return (
        <>
          <ChecklistPart ride={ride} report={report} />
          <ChecklistSheet {...{ ride, report, paper, date }} />
        </>
      )
  }
}
