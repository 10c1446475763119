import { Button } from '#ui/Button.tsx'
import { words } from '#words/words.ts'

interface Props {
  /** What to do on the bike now, in whole sentences; null when everything has been tried. */
  say: string | null
  onSkip: () => void
}

/** The next thing to do, large enough to read from the saddle. */
export function Guide({ say, onSkip }: Props) {
  return (
    <div className="calibrate-guide">
      <p aria-live="polite">{say ?? words.calibrating.last}</p>
      {say !== null && (
        <Button tone="quiet" onClick={onSkip}>
          {words.calibrating.skip}
        </Button>
      )}
    </div>
  )
}
