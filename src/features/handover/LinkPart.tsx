import { useRef, useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { useAppStore } from '#store/useApp.ts'
import { Source } from '#ui/Source.tsx'
import { words } from '#words/words.ts'
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
      <h2 id="handover-link">{words.handover.link}</h2>
      <p>{words.handover.linkAbout}</p>
      <textarea
        ref={field}
        className="handover-link"
        aria-label={words.handover.link}
        aria-describedby="handover-length"
        readOnly
        rows={4}
        value={link}
        onFocus={(event) => event.currentTarget.select()}
        onCopy={onSent}
        spellCheck={false}
      />
      <p id="handover-length" className="handover-length">
        {words.handover.characters({ count: link.length })}
      </p>
      {isLongLink(link.length) && (
        <p className="handover-long">
          {words.handover.longLink({ most: COMFORTABLE_LINK })} <Source text={words.handover.longLinkSource} />
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
          {mail.holdsLink ? words.handover.email : words.handover.copyThenEmail}
        </a>
        <ActionButton action={SHARE_LINK} on={on} />
        <span role="status">{told}</span>
      </div>
    </section>
  )
}
