import { CUT, OTHER_CUT } from './actions/cuts.ts'
import type { LeadGround } from './actions/leadGround.ts'
import { LeadButton } from './LeadButton.tsx'

interface Props {
  text: string
  /** What the last press did. */
  said: string
  on: LeadGround
}

/** What to leave out to end on time, and the one press that does it. */
export function ProposalBar({ text, said, on }: Props) {
  return (
    <div className="lead-proposal">
      <p>
        {said && <span className="lead-quiet">{said} </span>}
        {text}
      </p>
      <LeadButton action={CUT} on={on} />
      <LeadButton action={OTHER_CUT} on={on} />
    </div>
  )
}
