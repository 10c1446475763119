import { type RefObject, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react'
import { keyWords } from '#actions/action.ts'
import { tradeCues } from '#engine/cues/completion/tradeCues.ts'
import type { SpotName } from '#engine/cues/cueSpots.ts'
import { removeCue, writeCue } from '#plan/commands/writeCue.ts'
import type { Cue } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { findBlock } from '#plan/places.ts'
import type { AppState } from '#store/state.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Disclosure } from '#ui/Disclosure.tsx'
import { IconButton } from '#ui/IconButton.tsx'
import { clock } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
import { CueField } from './CueField.tsx'
import { CUE_LINE_KEYS } from './cueLineKeys.ts'
import { useSaid } from './useSaid.ts'
import {
  type At,
  afterKeeping,
  cueAt,
  cueMoved,
  cueOf,
  momentOf,
  nextBlock,
  opening,
  playedIndex,
  sameMoment,
  stepOn,
  timeOfPlace,
  wordsMoved,
} from './writing.ts'
import './cueLine.css'

interface CueLineProps {
  /** The block it is opened for; from then on it is about the block that is selected. */
  blockId: string
  /** Where it opens; ahead of the change, or wherever nothing is said yet, if not told. */
  cueId: string | null
  /** What was typed before the line was there. */
  begun: RefObject<string>
  onClose: () => void
  /** The line is about this block now. */
  onShow: (blockId: string) => void
}

/** The ride and its report as they are kept. */
const planOf = ({ ride, report }: AppState) => (ride && report ? { ride, report } : null)

/**
 * The cues of a block, written one after another: the line goes from moment to moment and from block to block, and has the
 * cue that stands there, or room for a new one. What is typed is kept on leaving it, as in any field, each cue as one step.
 */
export function CueLine({ blockId: opened, cueId, begun, onClose, onShow }: CueLineProps) {
  const store = useAppStore()
  const ride = useApp((state) => state.ride)
  const report = useApp((state) => state.report)
  const plan = useMemo(() => (ride && report ? { ride, report } : null), [ride, report])
  const selected = useApp(({ selection: { ids } }) => ids.at(-1))
  const [{ blockId, at }, setLine] = useState<{ blockId: string; at: At }>(() => ({
    blockId: opened,
    at: cueId === null ? openingAt(store.getState(), opened) : { cueId },
  }))
  const [freshId, setFreshId] = useState(() => store.getState().newId())
  const said = useSaid()
  const index = plan ? playedIndex(plan, blockId) : -1
  const trade = useMemo(() => (plan && index >= 0 ? tradeCues(plan.ride, plan.report, index) : []), [plan, index])
  const field = useRef<HTMLInputElement>(null)
  const takesFocus = useRef(true)
  const typed = useRef('')
  const refused = useRef(false)
  // What a press has changed counts at once, for the rest of that press.
  const line = useRef({ blockId, at })
  useLayoutEffect(() => {
    line.current = { blockId, at }
  }, [blockId, at])
  const isGone = index < 0
  useEffect(() => {
    if (isGone) onClose()
  }, [isGone, onClose])

  const goTo = (next: At, block = line.current.blockId) => {
    takesFocus.current ||= field.current !== null && document.activeElement === field.current
    line.current = { blockId: block, at: next }
    setLine(line.current)
  }
  const cue = plan && 'cueId' in at ? cueOf(plan, blockId, at.cueId) : undefined
  // Somebody chose another block on the stage; or the cue was undone or taken out elsewhere.
  if (plan && selected !== undefined && selected !== blockId && playedIndex(plan, selected) >= 0) {
    setLine({ blockId: selected, at: sameMoment(plan, playedIndex(plan, selected), index < 0 ? undefined : nameAt(plan, blockId, at)) })
  } else if (plan && index >= 0 && 'cueId' in at && !cue) setLine({ blockId, at: opening(plan, index) })
  const standing = useMemo(
    () => cue ?? (plan && index >= 0 && 'place' in at ? cueAt(plan, freshId, at.place, '') : null),
    [cue, plan, index, at, freshId],
  )
  if (!plan || index < 0 || !standing) return null

  const now = () => planOf(store.getState())!
  const indexNow = () => playedIndex(now(), line.current.blockId)
  const keep = (made: Cue) => {
    if (!store.getState().run(writeCue(now().ride, { blockId: line.current.blockId, cue: made }))) return
    const isThere = cueOf(now(), line.current.blockId, made.id) !== undefined
    goTo(isThere ? { cueId: made.id } : { place: made, chosen: true })
    if (made.id === freshId) setFreshId(store.getState().newId())
  }
  /** What the field has is kept as when it is left, and it has the focus still. */
  const leave = (): boolean => {
    if (document.activeElement !== field.current) return true
    refused.current = false
    takesFocus.current = true
    field.current?.blur()
    field.current?.focus()
    takesFocus.current = !refused.current
    return !refused.current
  }
  const step = (by: 1 | -1) => {
    const { at: here } = line.current
    if ('place' in here && typed.current.trim() !== '') return goTo(wordsMoved(now(), indexNow(), here.place, by))
    if (leave()) goTo(stepOn(now(), indexNow(), line.current.at, by))
  }
  const move = (by: 1 | -1) => {
    if ('place' in line.current.at) return step(by)
    if (!leave() || !('cueId' in line.current.at)) return
    const held = cueOf(now(), line.current.blockId, line.current.at.cueId)
    if (held) store.getState().run(writeCue(now().ride, { blockId, cue: cueMoved(now(), indexNow(), held, by) }))
  }
  const toBlock = (by: 1 | -1) => {
    if (!leave()) return
    const next = nextBlock(now(), line.current.blockId, by)
    if (next === undefined) return
    goTo(sameMoment(now(), playedIndex(now(), next), nameAt(now(), line.current.blockId, line.current.at)), next)
    store.getState().selectItem(next)
    onShow(next)
  }
  const remove = () => {
    if (!cue) return
    store.getState().run(removeCue(now().ride, { blockId, cueId: cue.id }))
    takesFocus.current = true
    goTo({ place: cue, chosen: true })
  }

  const { cueLine } = words
  const place = findBlock(plan.ride, blockId)!
  const name = tell(itemName(place.block))
  const when = timeOfPlace(plan, index, standing)
  return (
    <section
      className="cue-line"
      aria-label={cueLine.write}
      // What is pressed here leaves the field its focus: its words would be taken, and all under the pointer move, before the press is done.
      onMouseDown={(event) => {
        if (event.target !== field.current) event.preventDefault()
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return
        event.stopPropagation()
        onClose()
      }}
    >
      <div className="cue-places">
        <div className="cue-place">
          <IconButton label={cueLine.blockBefore} disabled={nextBlock(plan, blockId, -1) === undefined} onClick={() => toBlock(-1)}>
            <Chevron back />
          </IconButton>
          <span>
            <b>{name}</b> <small>{clock(plan.report.blocks[index]!.from)}</small>
          </span>
          <IconButton label={cueLine.blockAfter} disabled={nextBlock(plan, blockId, 1) === undefined} onClick={() => toBlock(1)}>
            <Chevron />
          </IconButton>
        </div>
        <div className="cue-place">
          <IconButton label={cueLine.earlier} onClick={() => step(-1)}>
            <Chevron back />
          </IconButton>
          <span role="status">
            {cueLine.spot(momentOf(plan, index, standing))} <small>{cueLine.at({ at: when })}</small>
          </span>
          <IconButton label={cueLine.later} onClick={() => step(1)}>
            <Chevron />
          </IconButton>
        </div>
        {cue && (
          <Button tone="quiet" onClick={remove}>
            {cueLine.remove}
          </Button>
        )}
        <Button tone="quiet" className="cue-close" onClick={() => leave() && onClose()}>
          {cueLine.close}
        </Button>
      </div>
      <CueField
        key={`${blockId} ${cue?.id ?? 'new'}`}
        {...{ plan, blockId, name, index, standing, said, trade, field, takesFocus, typed, begun }}
        isNew={!cue}
        isChosen={'place' in at && at.chosen}
        onKeep={keep}
        onLeave={leave}
        onNext={(made) => {
          takesFocus.current = true
          goTo(afterKeeping(now(), indexNow(), made))
        }}
        onStep={step}
        onMove={move}
        onBlock={toBlock}
        onRefused={() => {
          refused.current = true
        }}
        onClose={onClose}
      />
      <Disclosure summary={cueLine.help}>
        <dl className="cue-keys">
          {CUE_LINE_KEYS.map((row) => (
            <div key={tell(row.does)}>
              <dt>
                {keyWords(row).map((key) => (
                  <kbd key={key}>{key}</kbd>
                ))}
              </dt>
              <dd>{tell(row.does)}</dd>
            </div>
          ))}
        </dl>
      </Disclosure>
    </section>
  )
}

function openingAt(state: AppState, blockId: string): At {
  const plan = planOf(state)!
  return opening(plan, playedIndex(plan, blockId))
}

/** The name of the moment the line is at. */
function nameAt(plan: NonNullable<ReturnType<typeof planOf>>, blockId: string, at: At): SpotName | undefined {
  const place = 'place' in at ? at.place : cueOf(plan, blockId, at.cueId)
  const name = place && momentOf(plan, playedIndex(plan, blockId), place).name
  return name === 'beforeChange' || name === 'beforeEnd' ? undefined : name
}

function Chevron({ back }: { back?: boolean }) {
  return (
    <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" fill="none" stroke="currentColor" strokeWidth="1.8">
      <path d={back ? 'M9 2 4 7l5 5' : 'M5 2l5 5-5 5'} strokeLinecap="round" strokeLinejoin="round" />
    </svg>
  )
}
