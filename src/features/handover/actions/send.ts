import type { Action, ActionPlace, Ground } from '#actions/action.ts'
import { fileName } from '#features/handover/fileName.ts'
import { shareable } from '#plan/link/shareable.ts'
import { saveTextFile } from '#ui/saveTextFile.ts'

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
  name: 'copy link',
  does: 'copy the link, to paste it anywhere',
  do: async ({ link, tell, selectLink, onSent }) => {
    try {
      await navigator.clipboard.writeText(link)
      tell('The link is copied.')
      onSent()
    } catch {
      // No clipboard here (an insecure address, a refused permission): the keyboard's copy still works.
      selectLink()
      tell('This browser does not let the page copy. The link is selected: copy it with Ctrl+C or ⌘C.')
    }
  },
}

export const SHARE_LINK: Action<LinkGround> = {
  id: 'send.share',
  name: 'share…',
  does: 'hand the link to another program',
  can: () => 'share' in navigator,
  do: async ({ link, title, tell, onSent }) => {
    try {
      await navigator.share({ title, url: link })
      onSent()
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return
      tell('The share sheet did not open. Copy the link instead.')
    }
  },
}

export const SAVE_FILE: Action<SendGround> = {
  id: 'send.saveFile',
  name: 'save as file',
  does: 'the ride as a file, to attach or to keep',
  do: ({ store, onSent }) => {
    const { shown, announce } = store.getState()
    if (!shown) return
    const name = fileName(shown.title)
    saveTextFile(name, `${JSON.stringify(shareable(shown), null, 2)}\n`)
    announce(`Saved ${name}`)
    onSent()
  },
}

const onPage = { reach: 'page', repeats: false } as const

export const LINK: ActionPlace<LinkGround> = {
  id: 'link',
  ...onPage,
  groups: [{ title: 'handing over', actions: [COPY_LINK, SHARE_LINK] }],
}

export const FILE: ActionPlace<SendGround> = { id: 'file', ...onPage, groups: [{ title: 'handing over', actions: [SAVE_FILE] }] }
