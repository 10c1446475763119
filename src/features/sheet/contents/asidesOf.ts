import type { RideReport } from '#engine/report.ts'
import { clock } from '#words/forms.ts'
import { words } from '#words/words.ts'
import type { Aside } from './contents.ts'

/** What the class's clock runs through beside the songs: the welcome before the first, the wipe-down after the last; nothing where none is planned. */
export function asidesOf({ spans }: Pick<RideReport, 'spans'>, format = clock): { opening?: Aside; closing?: Aside } {
  const aside = (kind: 'briefing' | 'clearUp', said: (values: { length: string }) => string): Aside | undefined => {
    const span = spans.find((one) => one.kind === kind)
    return span && { rideClock: format(span.from), words: said({ length: format(span.to - span.from) }) }
  }
  return { opening: aside('briefing', words.printed.welcome), closing: aside('clearUp', words.printed.wipeDown) }
}
