import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Notice } from '#ui/Notice.tsx'

/** What the user has to know, and the way back from a deletion. */
export function Notices() {
  const notice = useApp((state) => state.notice)
  const dismiss = useApp((state) => state.dismissNotice)
  return (
    <div className="app-notices">
      {notice && (
        <Notice urgent={notice.kind === 'problem'} onDismiss={dismiss}>
          {notice.sentence}
          {notice.details && notice.details.length > 0 && <Details details={notice.details} />}
        </Notice>
      )}
      <Removed />
    </div>
  )
}

function Details({ details }: { details: readonly string[] }) {
  return (
    <span className="app-details">
      {details.map((detail) => (
        <span key={detail}>{detail}</span>
      ))}
    </span>
  )
}

function Removed() {
  const title = useApp((state) => state.removed?.title)
  const restore = useApp((state) => state.restoreRemoved)
  const forget = useApp((state) => state.forgetRemoved)
  if (title === undefined) return null
  return (
    <Notice
      onDismiss={forget}
      actions={
        <Button tone="action" onClick={restore}>
          put it back
        </Button>
      }
    >
      “{title || 'untitled ride'}” is deleted.
    </Notice>
  )
}
