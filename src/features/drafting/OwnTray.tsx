import { useMemo, useState } from 'react'
import { useAction } from '#actions/useAction.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Field } from '#ui/Field.tsx'
import { Figure } from '#ui/figures/Figure.tsx'
import { SearchField } from '#ui/SearchField.tsx'
import { words } from '#words/words.ts'
import type { DraftGround } from './actions/draftGround.ts'
import { addOwn } from './actions/whole/add.ts'
import { figureOfItems } from './blockFigure.ts'
import { nameProblem } from './KeepPattern.tsx'
import { type Own, ownPatternsIn } from './ownPatternCommand.ts'
import { DragHandle } from './stage/drag/DragHandle.tsx'
import './ownTray.css'

/** More than that are searched rather than looked through. */
const SEARCHED_FROM = 9

/** The patterns kept on this device, in one row that scrolls: used as the built-in ones are, renamed and deleted under "edit". */
export function OwnTray({ on }: { on: DraftGround }) {
  const profiles = useApp((state) => state.profiles)
  const all = ownPatternsIn({ profiles })
  return all.length === 0 ? null : <Row all={all} on={on} />
}

function Row({ all, on }: { all: readonly Own[]; on: DraftGround }) {
  const [isEdited, setEdited] = useState(false)
  const [search, setSearch] = useState('')
  const sought = search.trim().toLowerCase()
  const found = all.filter(({ name }) => name.toLowerCase().includes(sought))
  return (
    <fieldset className="own-tray" aria-label={words.ownPatterns.mine}>
      <div className="own-head">
        <span>{words.ownPatterns.mine}</span>
        <Button tone="quiet" aria-expanded={isEdited} onClick={() => setEdited(!isEdited)}>
          {isEdited ? words.ownPatterns.done : words.ownPatterns.edit}
        </Button>
        {all.length >= SEARCHED_FROM && <SearchField value={search} placeholder={words.ownPatterns.find} onChange={setSearch} />}
      </div>
      {found.length === 0 && <p className="tray-note">{words.ownPatterns.noneFound}</p>}
      {isEdited ? (
        <ul className="own-list">
          {found.map((own) => (
            <EditRow key={own.id} own={own} all={all} />
          ))}
        </ul>
      ) : (
        <div className="own-row">
          {found.map((own) => (
            <DragHandle key={own.id} kind="own" id={own.id}>
              <OwnButton own={own} on={on} />
            </DragHandle>
          ))}
        </div>
      )}
    </fieldset>
  )
}

function OwnButton({ own, on }: { own: Own; on: DraftGround }) {
  const action = useMemo(() => addOwn(own), [own])
  const { words: name, props } = useAction(action, on)
  return (
    <button type="button" className="tray-pattern" {...props}>
      <Figure name={figureOfItems(own.pattern.items)} />
      <bdi className="own-name">{name}</bdi>
    </button>
  )
}

function EditRow({ own, all }: { own: Own; all: readonly Own[] }) {
  const store = useAppStore()
  const rename = (typed: string) => {
    const name = typed.trim()
    if (name === own.name) return null
    const problem = nameProblem(name, all)
    if (problem === null) void store.getState().keepProfile({ ...own, name })
    return problem
  }
  const remove = async () => {
    await store.getState().removeProfile(own.id)
    if (store.getState().profiles.some(({ id }) => id === own.id)) return
    const { deleted, undo } = words.ownPatterns
    store.getState().notify({ kind: 'info', sentence: deleted(own), offer: { label: undo, profile: own } })
  }
  return (
    <li>
      <Figure name={figureOfItems(own.pattern.items)} />
      <Field key={own.name} label={words.ownPatterns.rename(own)} hideLabel value={own.name} onCommit={rename} />
      <Button tone="quiet" onClick={() => void remove()} aria-label={words.ownPatterns.deleteNamed(own)}>
        {words.ownPatterns.delete}
      </Button>
    </li>
  )
}
