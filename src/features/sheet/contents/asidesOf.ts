import type { RideReport } from '#engine/report.ts'
import { formatClock } from '#units/formatClock.ts'
import type { Aside } from './contents.ts'

/** What the class's clock runs through beside the songs: the welcome before the first, the wipe-down after the last; nothing where none is planned. */
export function asidesOf({ spans }: Pick<RideReport, 'spans'>, format = formatClock): { opening?: Aside; closing?: Aside } {
  const aside = (kind: 'briefing' | 'clearUp', words: string): Aside | undefined => {
    const span = spans.find((one) => one.kind === kind)
    return span && { rideClock: format(span.from), words: `${words}, ${format(span.to - span.from)}` }
  }
  return { opening: aside('briefing', WELCOME), closing: aside('clearUp', WIPE_DOWN) }
}

export const WELCOME = 'welcome and bike setup'
export const WIPE_DOWN = 'wipe-down'
