import { useEffect, useRef } from 'react'
import type { Notice as NoticeOf } from '#store/noticeSlice.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Notice } from '#ui/Notice.tsx'
import { words } from '#words/words.ts'

/** What the user has to know, and the way back from a deletion. */
export function Notices() {
  const notice = useApp((state) => state.notice)
  const dismiss = useApp((state) => state.dismissNotice)
  return (
    <div className="app-notices">
      {notice && (
        <Notice urgent={notice.kind === 'problem'} onDismiss={dismiss} actions={notice.offer && <Offer offer={notice.offer} />}>
          {notice.sentence}
          {notice.details && notice.details.length > 0 && <Details details={notice.details} />}
        </Notice>
      )}
      <Removed />
    </div>
  )
}

function Offer({ offer }: { offer: NonNullable<NoticeOf['offer']> }) {
  const setPlace = useApp((state) => state.setPlace)
  const askForEntry = useApp((state) => state.askForEntry)
  const keepDeleted = useApp((state) => state.keepDeleted)
  const keepProfile = useApp((state) => state.keepProfile)
  const dismiss = useApp((state) => state.dismissNotice)
  const go = () => {
    dismiss()
    if ('keep' in offer) keepDeleted()
    else if ('profile' in offer) void keepProfile(offer.profile)
    else if (offer.entry) askForEntry()
    else setPlace(offer.place)
  }
  return (
    <Button tone="action" onClick={go}>
      {offer.label}
    </Button>
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

/** Rides deleted a moment ago. They are told of where the list of rides is, and nowhere else. */
function Removed() {
  const removed = useApp((state) => state.removed)
  const atStart = useApp((state) => state.place === 'start')
  const restore = useApp((state) => state.restoreRemoved)
  const forget = useApp((state) => state.forgetRemoved)
  if (!atStart) return null
  return removed.map(({ id, title }) => (
    <Notice key={id} onDismiss={() => forget(id)} actions={<PutBack onPress={() => restore(id)} />}>
      {words.app.deleted({ title: title || words.names.untitled })}
    </Notice>
  ))
}

/** Takes the focus as it appears: the row it replaces, and the button that had the focus, are gone. */
function PutBack({ onPress }: { onPress: () => void }) {
  const button = useRef<HTMLDivElement>(null)
  useEffect(() => button.current?.querySelector('button')?.focus(), [])
  return (
    <div ref={button}>
      <Button tone="action" onClick={onPress}>
        {words.app.restore}
      </Button>
    </div>
  )
}
