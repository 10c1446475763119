import type { Action, ActionPlace, Ground } from '#actions/action.ts'
import { chordWords } from '#actions/keys/chord.ts'
import { fileName } from '#features/handover/fileName.ts'
import { shareable } from '#plan/link/shareable.ts'
import { saveTextFile } from '#ui/saveTextFile.ts'
import { or } from '#words/forms.ts'
import { say } from '#words/said.ts'
import { words } from '#words/words.ts'

/** What a ride is handed over on. */
interface SendGround extends Ground {
  /** The ride leaves this page, as far as can be told. */
  onSent: () => void
}

export interface LinkGround extends SendGround {
  link: string
  title: string
  /** Shown beside the link as well as spoken. */
  tell: (sentence: string) => void
  /** Has the whole link selected, for the keyboard’s own copy. */
  selectLink: () => void
}

export const COPY_LINK: Action<LinkGround> = {
  id: 'send.copyLink',
  name: say('actions.copyLink'),
  does: say('actions.copyLinkDo'),
  do: async ({ link, tell, selectLink, onSent }) => {
    try {
      await navigator.clipboard.writeText(link)
      tell(words.actions.linkCopied)
      onSent()
    } catch {
      // No clipboard here (an insecure address, a refused permission): the keyboard's copy still works.
      selectLink()
      tell(words.actions.linkNotCopied({ keys: or(chordWords('Mod+C')) }))
    }
  },
}

export const SHARE_LINK: Action<LinkGround> = {
  id: 'send.share',
  name: say('actions.shareLink'),
  does: say('actions.shareLinkDo'),
  can: () => 'share' in navigator,
  do: async ({ link, title, tell, onSent }) => {
    try {
      await navigator.share({ title, url: link })
      onSent()
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return
      tell(words.actions.shareFailed)
    }
  },
}

export const SAVE_FILE: Action<SendGround> = {
  id: 'send.saveFile',
  name: say('actions.saveFile'),
  does: say('actions.saveFileDo'),
  do: ({ store, onSent }) => {
    const { shown, announce } = store.getState()
    if (!shown) return
    const name = fileName(shown.title)
    saveTextFile(name, `${JSON.stringify(shareable(shown), null, 2)}\n`)
    announce(words.actions.saved({ name }))
    onSent()
  },
}

const onPage = { reach: 'page', repeats: false } as const

export const LINK: ActionPlace<LinkGround> = {
  id: 'link',
  ...onPage,
  groups: [{ title: say('actions.group', { group: 'sharing' }), actions: [COPY_LINK, SHARE_LINK] }],
}

export const FILE: ActionPlace<SendGround> = {
  id: 'file',
  ...onPage,
  groups: [{ title: say('actions.group', { group: 'sharing' }), actions: [SAVE_FILE] }],
}
