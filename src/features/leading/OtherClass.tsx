import { useApp, useAppStore } from '#store/useApp.ts'
import { LeadButton, LeaveButton } from './LeadButton.tsx'
import { useConfirm } from './useConfirm.ts'
import { useLeadKeys } from './useLeadKeys.ts'

interface Props {
  /** Titles of the ride that is being led and of the one that was opened. */
  led: string
  opened: string
  onGoOn: () => void
  /** Ends the class under way, for the one that was opened. */
  onEnd: () => void
}

/** A class of another ride is under way: it is not lost by opening the wrong one. */
export function OtherClass({ led, opened, onGoOn, onEnd }: Props) {
  const store = useAppStore()
  const follows = useApp((state) => state.ledElsewhere)
  const confirm = useConfirm()
  const leave = () => confirm.press('leave', () => store.getState().setPlace('draft'))
  useLeadKeys((key) => {
    if (key === 'one') onGoOn()
    else if (key === 'leave') leave()
  })
  return (
    <div className="lead-card">
      <header>
        <h1>“{led}” is still being led.</h1>
        <p className="lead-quiet">You opened “{opened}”. One class is led at a time.</p>
      </header>
      <div className="lead-bar">
        <LeadButton tone="main" keys="space" onPress={onGoOn}>
          go on with it
        </LeadButton>
        {!follows && (
          <LeadButton armed={confirm.armed === 'end'} onPress={() => confirm.press('end', onEnd)}>
            {confirm.armed === 'end' ? 'press again to end it' : 'end it'}
          </LeadButton>
        )}
        <LeaveButton armed={confirm.armed === 'leave'} onPress={leave} />
      </div>
    </div>
  )
}
