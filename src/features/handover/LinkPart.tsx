import { useRef, useState } from 'react'
import { Button } from '#ui/Button.tsx'
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

  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link)
      tell('The link is copied.')
      onSent()
    } catch {
      // No clipboard here (an insecure address, a refused permission): the keyboard's copy still works.
      field.current?.focus()
      field.current?.select()
      tell('This browser does not let the page copy. The link is selected: copy it with Ctrl+C or ⌘C.')
    }
  }

  const share = async () => {
    try {
      await navigator.share({ title, url: link })
      onSent()
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return
      tell('The share sheet did not open. Copy the link instead.')
    }
  }

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
        <Button tone="solid" onClick={copy}>
          copy link
        </Button>
        <a className="ui-button" data-tone="plain" href={mail.address} onClick={mail.holdsLink ? onSent : () => void copy()}>
          {mail.holdsLink ? 'send by mail' : 'copy, then write a mail'}
        </a>
        {'share' in navigator && <Button onClick={share}>share…</Button>}
        <span role="status">{told}</span>
      </div>
    </section>
  )
}
