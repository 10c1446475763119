import { useCombobox } from 'downshift'
import { type KeyboardEvent, type RefObject, useId, useLayoutEffect, useMemo } from 'react'
import type { TradeCue } from '#engine/cues/completion/completeCue.ts'
import type { SaidCue } from '#engine/cues/completion/saidIn.ts'
import type { RideReport } from '#engine/report.ts'
import { SpeechNote } from '#features/drafting/panel/block/SpeechNote.tsx'
import { useHeldPreview } from '#features/drafting/useHeldPreview.ts'
import { writeCue } from '#plan/commands/writeCue.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { Button } from '#ui/Button.tsx'
import { useDraftText } from '#ui/useDraftText.ts'
import { tellRefusal, words } from '#words/words.ts'
import { type Offered, offeredAt } from './offered.ts'
import { fieldOfCue } from './useLeftCue.ts'
import { cueAt, momentOf, placeOfWords } from './writing.ts'

interface CueFieldProps {
  plan: { ride: Ride; report: RideReport }
  blockId: string
  name: string
  /** Of the block in the report. */
  index: number
  /** The cue that is changed, or a new one without words yet. */
  standing: Cue
  isNew: boolean
  /** Somebody went to this moment: words do not bring one of their own along. */
  isChosen: boolean
  said: readonly SaidCue[]
  trade: readonly TradeCue[]
  field: RefObject<HTMLInputElement | null>
  /** Whether the field takes the focus as it appears. */
  takesFocus: RefObject<boolean>
  /** What was typed before the field was there. */
  begun: RefObject<string>
  /** What stands in it and is not kept yet. */
  typed: RefObject<string>
  onKeep: (cue: Cue) => void
  /** Keeps what the field has; false where that was refused. */
  onLeave: () => boolean
  /** A cue is kept, and the line goes on. */
  onNext: (cue: Cue) => void
  onStep: (step: 1 | -1) => void
  onMove: (step: 1 | -1) => void
  onBlock: (step: 1 | -1) => void
  onRefused: () => void
  onClose: () => void
}

/** Most characters of one cue: far more than can be said before a change. */
const LONGEST = 500

/** The words of one cue, shown on the stage while they are typed, and what they can be finished with. */
export function CueField(props: CueFieldProps) {
  const { plan, blockId, name, index, standing, isNew, isChosen, said, trade, field, takesFocus, typed, begun } = props
  const id = useId()
  const value = standing.text
  const inHand = (text: string, offer?: Offered): Cue => {
    if (!isNew || !offer) return { ...standing, text }
    return cueAt(plan, standing.id, isChosen ? standing : placeOfWords(plan, index, text, offer.moment, standing), text, offer.count)
  }
  const { text, problem, isBack, restore, write, inputProps } = useDraftText(
    fieldOfCue(blockId, isNew ? null : standing.id),
    value,
    (draft) => {
      const spoken = draft.trim()
      if (spoken.length > LONGEST) {
        props.onRefused()
        return words.fields.tooLong({ most: LONGEST, length: spoken.length })
      }
      if (spoken !== value.trim()) props.onKeep(inHand(spoken))
      return null
    },
  )
  // At once and not when there is time: the arrows choose among what the words typed so far have found.
  const offers = useMemo(
    // A cue that stands as it is wants no other words.
    () => (isNew || text !== value ? offeredAt(plan, index, text, said, trade, isNew ? standing : null) : []),
    [plan, index, text, value, said, trade, isNew, standing],
  )
  const { getInputProps, getMenuProps, getItemProps, highlightedIndex, setHighlightedIndex } = useCombobox<Offered>({
    id,
    items: offers,
    isOpen: true,
    inputValue: text,
    selectedItem: null,
    itemToString: (offer) => offer?.label ?? '',
    // A pointer that rests on one chooses nothing: Enter keeps what was typed.
    stateReducer: (state, { type, changes }) => (POINTER.has(type) ? state : changes),
  })
  const offer = offers[highlightedIndex]
  const shown = inHand(offer ? offer.text : text, offer)
  const isWritten = offer !== undefined || text.trim() !== value.trim()
  const written = JSON.stringify(shown)
  const command = useMemo(
    () => (isWritten ? writeCue(plan.ride, { blockId, cue: JSON.parse(written) as Cue }) : null),
    [plan.ride, blockId, isWritten, written],
  )
  useHeldPreview(command)

  useLayoutEffect(() => {
    typed.current = text === value ? '' : text
  }, [typed, text, value])
  // Not at the first rendering: that may be long done when the line takes the place of the field people type in until then.
  useLayoutEffect(() => {
    if (begun.current === '') return
    write(value + begun.current)
    begun.current = ''
  }, [begun, write, value])
  useLayoutEffect(() => {
    if (!takesFocus.current) return
    takesFocus.current = false
    field.current?.focus()
    field.current?.setSelectionRange(field.current.value.length, field.current.value.length)
  }, [field, takesFocus])

  const keepOffer = (chosen: Offered) => {
    const made = inHand(chosen.text, chosen)
    setHighlightedIndex(-1)
    props.onKeep(made)
    restore()
    props.onNext(made)
  }
  const enter = () => {
    if (offer) keepOffer(offer)
    // A cue whose words were cleared is gone, and the line stays where it was.
    else if (props.onLeave() && (text.trim() !== '' || (!isNew && standing.moment === 'countIn'))) props.onNext(inHand(text.trim()))
  }
  const press = (event: KeyboardEvent<HTMLInputElement>) => {
    const native = event.nativeEvent as KeyboardEventOfList
    const { key, altKey, shiftKey } = event
    const step = key === 'ArrowDown' || key === 'PageDown' ? 1 : key === 'ArrowUp' || key === 'PageUp' ? -1 : 0
    // The list has the arrows; the text has its own keys.
    if (step === 0 || altKey || key.startsWith('Page')) native.preventDownshiftDefault = true
    if (native.isComposing) return
    if (key.startsWith('Page')) props.onBlock(step as 1 | -1)
    else if (step !== 0 && altKey) shiftKey ? props.onMove(step) : props.onStep(step)
    else if (key === 'Tab' && offer && !shiftKey) {
      write(offer.text)
      setHighlightedIndex(-1)
    } else if (key === 'Enter') enter()
    else if (key === 'Escape') {
      event.stopPropagation()
      if (offer) setHighlightedIndex(-1)
      else {
        inputProps.onKeyDown(event)
        props.onClose()
      }
    } else return
    event.preventDefault()
  }
  const { cueLine } = words
  const momentWords = cueLine.spot(momentOf(plan, index, shown))
  const under = problem === null ? (isBack ? words.fields.back : '') : tellRefusal(problem)
  return (
    <>
      <input
        {...getInputProps({
          ...inputProps,
          ref: field,
          onKeyDown: press,
          'aria-label': cueLine.field({ name, moment: momentWords }),
          'aria-labelledby': undefined,
          'aria-invalid': problem !== null,
          'aria-describedby': `${id}-said`,
          autoComplete: 'off',
          enterKeyHint: 'done',
          lang: plan.ride.language ?? 'en',
          placeholder: cueLine.placeholder,
        })}
      />
      <Button
        tone="action"
        disabled={command === null}
        onClick={() => {
          field.current?.focus()
          enter()
        }}
      >
        {isNew ? cueLine.add : cueLine.change}
      </Button>
      <div {...getMenuProps({ 'aria-label': cueLine.suggestions, className: 'cue-offers', hidden: offers.length === 0 })}>
        {offers.map((one, at) => {
          const made = inHand(one.text, one)
          const isElsewhere = one.count === undefined && momentOf(plan, index, made).name !== momentOf(plan, index, standing).name
          return (
            <div
              key={`${one.label} ${one.count}`}
              {...getItemProps({
                item: one,
                index: at,
                onClick: (event) => {
                  ;(event.nativeEvent as MouseEventOfList).preventDownshiftDefault = true
                  keepOffer(one)
                },
              })}
            >
              <span>{one.label}</span>
              {isElsewhere && <small>{cueLine.spot(momentOf(plan, index, made))}</small>}
            </div>
          )
        })}
      </div>
      <div id={`${id}-said`} className="cue-said">
        {under && <p role="alert">{under}</p>}
        {command && shown.text.trim() !== '' && <SpeechNote cueId={shown.id} />}
      </div>
    </>
  )
}

/** The library's own mark on an event it is to leave alone. */
type KeyboardEventOfList = globalThis.KeyboardEvent & { preventDownshiftDefault?: boolean }
type MouseEventOfList = globalThis.MouseEvent & { preventDownshiftDefault?: boolean }

const { InputBlur, ItemMouseMove, MenuMouseLeave } = useCombobox.stateChangeTypes
const POINTER: ReadonlySet<unknown> = new Set([InputBlur, ItemMouseMove, MenuMouseLeave])
