import type { Proposal } from '#engine/leading/cuts/weighCuts.ts'
import { LeadButton } from './LeadButton.tsx'

interface Props {
  proposal: Proposal
  /** What the last press did. */
  said: string
  more: boolean
  onTake: (timeStamp: number) => void
  onOther: () => void
}

/** What to leave out to end on time, and the one press that does it. */
export function ProposalBar({ proposal, said, more, onTake, onOther }: Props) {
  return (
    <div className="lead-proposal">
      <p>
        {said && <span className="lead-quiet">{said} </span>}
        {proposal.text}
      </p>
      <LeadButton tone="main" keys="C" onPress={onTake}>
        cut it
      </LeadButton>
      {more && (
        <LeadButton keys="X" onPress={onOther}>
          another way
        </LeadButton>
      )}
    </div>
  )
}
