import {
  type ClipboardEvent,
  type KeyboardEvent,
  type RefObject,
  useEffect,
  useId,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react'
import { blockFigure, figureOfItems } from '#features/drafting/blockFigure.ts'
import { runAndSay } from '#features/drafting/draftActions.ts'
import { useHeldPreview } from '#features/drafting/useHeldPreview.ts'
import { writeLine } from '#plan/line/writeLine.ts'
import { itemName } from '#plan/names.ts'
import { findBlock } from '#plan/places.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Disclosure } from '#ui/Disclosure.tsx'
import { Figure } from '#ui/figures/Figure.tsx'
import { tell, words } from '#words/words.ts'
import { finished, finishing } from './finishing.ts'
import { patternsFound } from './patternsFound.ts'
import { addedPattern, typedBlocks, typedEdit } from './typedCommand.ts'
import './typedLine.css'

interface TypedLineProps {
  /** The block that is edited as a line; null for a new one after the selection. */
  edited: string | null
  /** What was typed before the line was there. */
  begun: RefObject<string>
  onClose: () => void
  /** The line has made or changed this block. */
  onDone: (id: string) => void
}

/**
 * A block typed in the trade's words, shown on the stage while it is typed. Enter takes it and the next line is ready;
 * several lines that are pasted are taken as one step, and those that name no block stay to be mended.
 */
export function TypedLine({ edited: opened, begun, onClose, onDone }: TypedLineProps) {
  const store = useAppStore()
  const ride = useApp((state) => state.ride)
  const selection = useApp((state) => state.selection)
  const profiles = useApp((state) => state.profiles)
  const [edited, setEdited] = useState(opened)
  const [text, setText] = useState(() => lineOf(store.getState().ride, opened))
  const [pasted, setPasted] = useState<string | null>(null)
  /** Which of the offers is about to be taken; null until somebody says, −1 for the line as it stands. */
  const [picked, setPicked] = useState<number | null>(null)
  const field = useRef<HTMLInputElement>(null)
  const id = useId()
  const place = ride && edited !== null ? findBlock(ride, edited) : undefined

  const typed = useMemo(() => {
    // The place of a new block goes by what is selected.
    void selection
    const state = { ...store.getState(), ride }
    return edited === null ? typedBlocks(state, pasted ?? text) : typedEdit(state, text, edited)
  }, [store, ride, selection, edited, pasted, text])
  const patterns = useMemo(
    () => (edited === null && pasted === null ? patternsFound(text, { profiles }) : []),
    [edited, pasted, text, profiles],
  )
  const suggestions = pasted === null ? finishing(text, words.lineWords) : []
  const offers = patterns.length + suggestions.length
  // A line that says nothing yet is the beginning of the first name that fits.
  const active = picked ?? (typed.command === null && patterns.length > 0 ? 0 : -1)
  const pattern = patterns[active]
  const way = suggestions[active - patterns.length]
  const added = useMemo(() => {
    void selection
    return pattern && addedPattern({ ...store.getState(), ride }, pattern)
  }, [store, ride, selection, pattern])
  const { command, ready, ids } = added ?? typed
  useHeldPreview(command)

  // Not at the first rendering: that may be long done when the line takes the place of the field people type in until then.
  useLayoutEffect(() => {
    const typedBefore = begun.current
    begun.current = ''
    setText((line) => line + typedBefore)
    field.current?.focus()
  }, [begun])
  useEffect(() => {
    field.current?.setSelectionRange(field.current.value.length, field.current.value.length)
  }, [])

  // A word that can still become one of the line's is not yet wrong, nor the beginning of a pattern's name.
  const wrong = added ? [] : typed.problems.filter(({ kind, to }) => offers === 0 || kind !== 'unknown' || to < text.length)
  const take = ({ command, ready, ids, rest } = added ?? typed) => {
    if (!command || !ready) return
    store.getState().dropPreview()
    if (!runAndSay(store, command, ids.at(-1))) return
    const last = ids.at(-1)!
    store.getState().selectItem(last)
    onDone(last)
    setEdited(null)
    setText(pasted === null ? rest : '')
    setPasted(pasted === null || rest === '' ? null : rest)
    setPicked(null)
    field.current?.focus()
  }
  const choose = (way: string) => {
    setText(finished(text, way))
    setPicked(null)
    field.current?.focus()
  }
  const press = (event: KeyboardEvent) => {
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0
    const finish = way ?? (event.key === 'Tab' && !event.shiftKey ? suggestions[0] : undefined)
    // Round and round through the offers and the line itself, which is −1.
    if (step !== 0 && offers > 0) setPicked(((active + 1 + step + offers + 1) % (offers + 1)) - 1)
    else if ((event.key === 'Enter' || event.key === 'Tab') && finish !== undefined) choose(finish)
    else if (event.key === 'Enter') take()
    else if (event.key === 'Escape') {
      event.stopPropagation()
      if ((picked ?? -1) >= 0) setPicked(null)
      else if (pasted !== null) setPasted(null)
      else onClose()
    } else return
    event.preventDefault()
  }
  const paste = (event: ClipboardEvent) => {
    const lines = event.clipboardData.getData('text/plain').trim()
    if (edited !== null || !/[\r\n]/.test(lines)) return
    event.preventDefault()
    setPasted(lines)
  }

  const { typedLine } = words
  const several = pasted !== null
  const hasQuotes = edited !== null && /["“”„«»]/.test(text)
  return (
    <section className="typed-line" aria-label={typedLine.type}>
      <label htmlFor={id}>{place ? typedLine.editLine({ name: tell(itemName(place.block)) }) : typedLine.newLine}</label>
      <input
        ref={field}
        id={id}
        role="combobox"
        aria-expanded={offers > 0}
        aria-controls={`${id}-words`}
        aria-activedescendant={pattern || way !== undefined ? `${id}-${active}` : undefined}
        aria-autocomplete="list"
        aria-describedby={`${id}-said`}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        value={text}
        placeholder={typedLine.placeholder}
        onChange={(event) => {
          setText(event.target.value)
          setPicked(null)
        }}
        onKeyDown={press}
        onPaste={paste}
      />
      <Button tone="action" disabled={command === null || !ready} onClick={() => take()}>
        {edited === null ? typedLine.take({ blocks: Math.max(1, ids.length) }) : typedLine.change}
      </Button>
      <Button tone="quiet" onClick={onClose}>
        {typedLine.close}
      </Button>
      <div id={`${id}-words`} role="listbox" aria-label={typedLine.suggestions} className="typed-words" hidden={offers === 0}>
        {patterns.map((found, at) => (
          // biome-ignore lint/a11y/useFocusableInteractive: the field keeps the focus and names the active one
          // biome-ignore lint/a11y/useKeyWithClickEvents: by key through the field
          <div
            key={found.id}
            id={`${id}-${at}`}
            role="option"
            aria-label={typedLine.addPattern({ name: found.name })}
            aria-selected={at === active}
            className="typed-pattern"
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => take(addedPattern(store.getState(), found))}
          >
            <Figure name={'own' in found ? figureOfItems(found.own.pattern.items) : blockFigure(found.pattern)} />
            <bdi>{found.name}</bdi>
          </div>
        ))}
        {suggestions.map((way, at) => (
          // biome-ignore lint/a11y/useFocusableInteractive: the field keeps the focus and names the active one
          // biome-ignore lint/a11y/useKeyWithClickEvents: by key through the field
          <div
            key={way}
            id={`${id}-${patterns.length + at}`}
            role="option"
            aria-selected={patterns.length + at === active}
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => choose(way)}
          >
            {way}
          </div>
        ))}
      </div>
      {several && <pre className="typed-pasted">{pasted}</pre>}
      <div id={`${id}-said`} role="status" className="typed-said">
        {(text !== '' || several) &&
          wrong.map((problem) => {
            const said = typedLine.problem(problem)
            return (
              <p key={`${problem.line} ${problem.from} ${problem.kind}`}>
                {several ? typedLine.ofLine({ line: problem.line, text: said }) : said}
              </p>
            )
          })}
        {hasQuotes && <p>{typedLine.cuesElsewhere}</p>}
        {edited !== null && <p>{typedLine.left}</p>}
      </div>
      <Disclosure summary={typedLine.help}>
        <p>{typedLine.keys}</p>
        <dl className="typed-examples">
          {typedLine.examples.map(({ line, means }) => (
            <div key={line}>
              <dt>{line}</dt>
              <dd>{means}</dd>
            </div>
          ))}
        </dl>
      </Disclosure>
    </section>
  )
}

function lineOf(ride: ReturnType<ReturnType<typeof useAppStore>['getState']>['ride'], blockId: string | null): string {
  const place = ride && blockId !== null ? findBlock(ride, blockId) : undefined
  return ride && place ? writeLine(place.block, words.lineWords, { ride, section: place.section }).text : ''
}
