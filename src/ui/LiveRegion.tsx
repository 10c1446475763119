interface LiveRegionProps {
  /** What to say, in words and never by an id; empty says nothing. */
  message: string
  /** Rises with every message, so that the same words said twice are heard twice. */
  turn?: number
}

/** Speaks a change to screen readers without moving the focus. Keep it mounted: a region that appears with its text is often not read. */
export function LiveRegion({ message, turn = 0 }: LiveRegionProps) {
  // Two regions that take turns: a reader announces a change of text, and the same text twice is no change.
  return (
    <div className="ui-hidden">
      <div role="status" aria-live="polite">
        {turn % 2 === 0 ? message : ''}
      </div>
      <div role="status" aria-live="polite">
        {turn % 2 === 1 ? message : ''}
      </div>
    </div>
  )
}
