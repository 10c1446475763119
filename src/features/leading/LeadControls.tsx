import type { LeadAct } from '#engine/leading/leadLog.ts'
import { FullScreenButton, LeadButton, LeaveButton } from './LeadButton.tsx'

interface Presses {
  act: (act: LeadAct, timeStamp: number) => void
  skipSong: (timeStamp: number) => void
  /** Ends the class where it is; the second press, as the first was for this or for leaving. */
  breakOff: (timeStamp: number) => void
  leave: () => void
  end: () => void
  undo: () => void
}

interface Props {
  held: boolean
  /** How much there is to undo. */
  acts: number
  finished: boolean
  /** Another window leads: nothing of the class is to be pressed here. */
  follows: boolean
  armed: string | null
  press: Presses
}

/** Large targets for what keys do too. A class that is left alone needs none of them. */
export function LeadControls({ held, acts, finished, follows, armed, press }: Props) {
  const does = (kind: 'one' | 'next' | 'back' | 'again' | 'hold') => (timeStamp: number) => press.act({ kind }, timeStamp)
  if (follows) {
    return (
      <div className="lead-bar">
        <FullScreenButton />
        <LeaveButton armed={armed === 'leave'} onPress={press.leave} />
      </div>
    )
  }
  if (finished) {
    return (
      <div className="lead-bar">
        <LeadButton tone="main" onPress={press.end} armed={armed === 'end'}>
          {armed === 'end' ? 'press again to end' : 'end the class'}
        </LeadButton>
        {acts > 0 && (
          <LeadButton keys="backspace" onPress={press.undo}>
            undo
          </LeadButton>
        )}
        <FullScreenButton />
        <LeaveButton armed={armed === 'leave'} onPress={press.leave} />
      </div>
    )
  }
  return (
    <div className="lead-bar">
      <LeadButton tone="main" keys="space" onPress={does('one')}>
        on the one now
      </LeadButton>
      <LeadButton keys="H" pressed={held} onPress={does('hold')}>
        {held ? 'go on' : 'hold here'}
      </LeadButton>
      <LeadButton keys="←" onPress={does('back')}>
        back
      </LeadButton>
      <LeadButton keys="→" onPress={does('next')}>
        next
      </LeadButton>
      <LeadButton keys="R" onPress={does('again')}>
        once more
      </LeadButton>
      {armed === 'leave' || armed === 'breakOff' ? (
        // Who is about to leave may have to end it: an alarm, an injury. The first press was theirs, so this is the second.
        <LeadButton keys="E" armed onPress={press.breakOff}>
          {armed === 'leave' ? 'end the class here' : 'press again to end it here'}
        </LeadButton>
      ) : (
        <LeadButton keys="N" armed={armed === 'skipSong'} onPress={press.skipSong}>
          {armed === 'skipSong' ? 'press again to skip' : 'skip song'}
        </LeadButton>
      )}
      <LeadButton keys="backspace" armed={armed === 'restart'} onPress={press.undo}>
        {acts > 0 ? 'undo' : armed === 'restart' ? 'press again to start over' : 'start over'}
      </LeadButton>
      <FullScreenButton />
      <LeaveButton armed={armed === 'leave'} onPress={press.leave} />
    </div>
  )
}
