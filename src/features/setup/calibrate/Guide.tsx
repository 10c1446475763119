import { Button } from '#ui/Button.tsx'

interface Props {
  /** What to do on the bike now, in whole sentences; null when everything has been tried. */
  say: string | null
  onSkip: () => void
}

/** The next thing to do, large enough to read from the saddle. */
export function Guide({ say, onSkip }: Props) {
  return (
    <div className="calibrate-guide">
      <p aria-live="polite">{say ?? 'That was the last one. See on the side what it changes, and take it or leave it.'}</p>
      {say !== null && (
        <Button tone="quiet" onClick={onSkip}>
          skip this one
        </Button>
      )}
    </div>
  )
}
