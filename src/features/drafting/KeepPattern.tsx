import { type FormEvent, useId, useState } from 'react'
import { itemsText } from '#plan/names.ts'
import { LONGEST_NAME, patternOf, runOf } from '#plan/patterns/ownPattern.ts'
import { useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Dialog } from '#ui/Dialog.tsx'
import { tell, words } from '#words/words.ts'
import { ownPatternsIn } from './ownPatternCommand.ts'

/** Asks under which name what is chosen is kept as a pattern; null asks nothing. */
export function KeepPattern({ ids, onClose }: { ids: readonly string[] | null; onClose: () => void }) {
  const form = useId()
  return (
    <Dialog
      open={ids !== null}
      title={words.ownPatterns.title}
      closeLabel={words.ownPatterns.cancel}
      onClose={onClose}
      actions={
        <Button type="submit" form={form} tone="solid">
          {words.ownPatterns.save}
        </Button>
      }
    >
      {ids && <NameForm id={form} ids={ids} onDone={onClose} />}
    </Dialog>
  )
}

function NameForm({ id, ids, onDone }: { id: string; ids: readonly string[]; onDone: () => void }) {
  const store = useAppStore()
  const under = useId()
  const [name, setName] = useState(() => firstName(store.getState().ride, ids))
  const [problem, setProblem] = useState<string | null>(null)
  const save = async (event: FormEvent) => {
    event.preventDefault()
    const state = store.getState()
    const wrong = nameProblem(name, ownPatternsIn(state))
    setProblem(wrong)
    const pattern = state.ride && patternOf(state.ride, ids)
    if (wrong !== null || !pattern) return
    if (await state.keepProfile({ kind: 'pattern', id: `pattern.${state.newId()}`, name: name.trim(), pattern })) onDone()
  }
  return (
    <form id={id} onSubmit={(event) => void save(event)} className="keep-pattern">
      <p>{words.ownPatterns.about}</p>
      <label className="ui-field">
        <span className="ui-field-label">{words.ownPatterns.name}</span>
        <input
          type="text"
          value={name}
          autoComplete="off"
          aria-invalid={problem !== null}
          aria-describedby={problem === null ? undefined : under}
          // biome-ignore lint/a11y/noAutofocus: the dialog is there for this one field
          autoFocus
          onFocus={({ currentTarget }) => currentTarget.select()}
          onChange={({ currentTarget }) => setName(currentTarget.value)}
        />
      </label>
      {problem !== null && (
        <p id={under} className="ui-field-problem" role="alert">
          {problem}
        </p>
      )}
    </form>
  )
}

/** What is wrong with a name, in a sentence. */
export function nameProblem(name: string, others: readonly { name: string }[]): string | null {
  const wanted = name.trim()
  if (wanted === '') return words.ownPatterns.nameless
  if (wanted.length > LONGEST_NAME) return words.ownPatterns.tooLong({ most: LONGEST_NAME })
  return others.some((other) => other.name === wanted) ? words.ownPatterns.taken({ name: wanted }) : null
}

/** The labels of what is chosen, as far as they fit. */
function firstName(ride: Parameters<typeof runOf>[0] | null, ids: readonly string[]): string {
  const run = ride && runOf(ride, ids)
  if (!ride || !run) return ''
  const title = run.items.length > 1 && ids.length === 1 ? (run.section.title ?? run.section.song?.title) : undefined
  const name =
    title ??
    tell(
      itemsText(
        ride,
        run.items.map((item) => item.id),
      ),
    )
  return [...name].slice(0, LONGEST_NAME).join('').trim()
}
