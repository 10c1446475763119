import { useRef, useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { useAppStore } from '#store/useApp.ts'
import { COPY_LINK, LINK, type LinkGround, SHARE_LINK } from './actions/send.ts'
import { COMFORTABLE_LINK, isLongLink, mailFor } from './linkComfort.ts'

interface Props {
  title: string
  /** The whole address. */
  link: string
  /** Spoken as well as shown. */
  onAnnounce: (sentence: string) => void
  /** The link left this page, as far as can be told. */
  onSent: () => void
}

/** The link itself with its length, and the ways to send it. */
export function LinkPart({ title, link, onAnnounce, onSent }: Props) {
  const field = useRef<HTMLTextAreaElement>(null)
  const [told, setTold] = useState('')
  const mail = mailFor(title, link)
  const tell = (sentence: string) => {
    setTold(sentence)
    onAnnounce(sentence)
  }

  const on: LinkGround = {
    store: useAppStore(),
    link,
    title,
    tell,
    onSent,
    selectLink: () => {
      field.current?.focus()
      field.current?.select()
    },
  }
  usePlaceActions(LINK, () => on)

  return (
    <section className="handover-part" aria-labelledby="handover-link">
      <h2 id="handover-link">a link</h2>
      <p>
        The whole ride is in the link itself, behind the “#”, which a browser sends to no server. Whoever opens it sees the ride read-only
        and can keep a copy; nothing of yours or theirs is changed.
      </p>
      <textarea
        ref={field}
        className="handover-link"
        aria-label="link"
        aria-describedby="handover-length"
        readOnly
        rows={4}
        value={link}
        onFocus={(event) => event.currentTarget.select()}
        onCopy={onSent}
        spellCheck={false}
      />
      <p id="handover-length" className="handover-length">
        {link.length.toLocaleString('en-GB')} characters
      </p>
      {isLongLink(link.length) && (
        <p className="handover-long">
          Longer than {COMFORTABLE_LINK.toLocaleString('en-GB')} characters: some mail programs and messengers cut such a link (common
          practice, no source). The file below is the safer way.
        </p>
      )}
      <div className="handover-actions">
        <ActionButton action={COPY_LINK} on={on} tone="solid" />
        <a
          className="ui-button"
          data-tone="plain"
          href={mail.address}
          onClick={(event) => (mail.holdsLink ? onSent() : COPY_LINK.do(on, event))}
        >
          {mail.holdsLink ? 'send by mail' : 'copy, then write a mail'}
        </a>
        <ActionButton action={SHARE_LINK} on={on} />
        <span role="status">{told}</span>
      </div>
    </section>
  )
}
