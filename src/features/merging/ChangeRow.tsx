import { clock } from '#words/forms.ts'
import { words } from '#words/words.ts'
import './changes.css'

interface Props {
  at?: number | undefined
  where?: string | undefined
  what: string
  before?: string | undefined
  after?: string | undefined
}

/** One change: when, where, what, and what it was and is. */
export function ChangeRow({ at, where, what, before, after }: Props) {
  return (
    <span className="merging-row">
      <span className="merging-clock">{at === undefined ? '' : clock(at)}</span>
      <span className="merging-what">
        {where !== undefined && <b>{where}</b>}
        {where !== undefined && ' '}
        <span>{what}</span>
      </span>
      {(before !== undefined || after !== undefined) && (
        <span className="merging-values">
          <b>{after}</b> <span className="merging-was">{words.merging.was({ value: before ?? '' })}</span>
        </span>
      )}
    </span>
  )
}
