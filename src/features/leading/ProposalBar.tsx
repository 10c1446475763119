import type { Proposal } from '#engine/leading/cuts/proposeCuts.ts'
import { LeadButton } from './LeadButton.tsx'

interface Props {
  proposal: Proposal
  more: boolean
  onTake: (timeStamp: number) => void
  onOther: () => void
}

/** What to leave out to end on time, and the one press that does it. */
export function ProposalBar({ proposal, more, onTake, onOther }: Props) {
  return (
    <div className="lead-proposal">
      <p role="status">{proposal.text}</p>
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
