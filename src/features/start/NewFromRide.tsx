import { type FormEvent, useId, useState } from 'react'
import { LIMITS } from '#plan/document/schema.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Dialog } from '#ui/Dialog.tsx'
import { Segmented } from '#ui/Segmented.tsx'
import { words } from '#words/words.ts'
import './newFromRide.css'

/** Asks how another ride is to begin from one: its title, and whether the songs come along. */
export function NewFromRide() {
  const template = useApp((state) => state.template)
  const ask = useApp((state) => state.askTemplate)
  const form = useId()
  return (
    <Dialog
      open={template !== null}
      title={words.ownPatterns.newTitle}
      closeLabel={words.ownPatterns.cancel}
      onClose={() => ask(null)}
      actions={
        <Button type="submit" form={form} tone="solid">
          {words.ownPatterns.make}
        </Button>
      }
    >
      {template && <Form id={form} from={template.id} title={template.title || words.names.untitled} />}
    </Dialog>
  )
}

const CHOICES = ['withSongs', 'blocksOnly'] as const

function Form({ id, from, title }: { id: string; from: string; title: string }) {
  const store = useAppStore()
  // Cut short, so that the copy's title is one a ride can have.
  const [name, setName] = useState(() => words.ownPatterns.copyOf({ title: [...title].slice(0, LIMITS.line / 2).join('') }))
  const [what, setWhat] = useState<(typeof CHOICES)[number]>('withSongs')
  const start = (event: FormEvent) => {
    event.preventDefault()
    void store.getState().startFrom(from, { title: name.trim(), songs: what === 'withSongs' })
  }
  return (
    <form id={id} onSubmit={start} className="new-from">
      <p>{words.ownPatterns.newAbout({ title })}</p>
      <label className="ui-field">
        <span className="ui-field-label">{words.ownPatterns.rideTitle}</span>
        <input
          type="text"
          value={name}
          maxLength={LIMITS.line}
          autoComplete="off"
          // biome-ignore lint/a11y/noAutofocus: the dialog begins with its title
          autoFocus
          onFocus={({ currentTarget }) => currentTarget.select()}
          onChange={({ currentTarget }) => setName(currentTarget.value)}
        />
      </label>
      <Segmented
        label={words.ownPatterns.what}
        value={what}
        choices={CHOICES.map((value) => ({ value, label: words.ownPatterns[value] }))}
        onChange={setWhat}
      />
      {what === 'blocksOnly' && <p className="start-hint">{words.ownPatterns.blocksOnlyHint}</p>}
    </form>
  )
}
