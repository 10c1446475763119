import { type KeyboardEvent, type ReactNode, useId, useMemo, useRef, useState } from 'react'
import { firstBeat } from '#engine/alignment/firstBeat.ts'
import { sayTapped } from '#engine/alignment/sayTapped.ts'
import { sayTempo } from '#engine/alignment/sayTempo.ts'
import { FEWEST_TAPS, TAPPED, tapTempo } from '#engine/alignment/tapTempo.ts'
import { sayFit } from '#engine/cadence/cadenceWindow.ts'
import { constantsOf } from '#engine/constants.ts'
import type { SectionActions } from '#features/drafting/panel/section/actionsOnSection.ts'
import type { Block, Ride, Song } from '#plan/model.ts'
import { isTempo } from '#plan/songs/rescaledSong.ts'
import { Button } from '#ui/Button.tsx'
import { Dialog } from '#ui/Dialog.tsx'
import type { Bpm } from '#units/units.ts'
import { number } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
import { tapOf } from './tapKeys.ts'
import { type Tap, useTaps } from './useTaps.ts'
import './tapTempo.css'

interface TapTempoProps {
  song: Song
  blocks: readonly Block[]
  houseRules: Ride['houseRules']
  does: SectionActions
}

/** The tempo by ear: tapped along with whatever plays the song, and taken in one step. */
export function TapTempo(props: TapTempoProps) {
  const [open, setOpen] = useState(false)
  return (
    <div className="panel-beside">
      <Button tone="quiet" onClick={() => setOpen(true)}>
        {words.panelsSong.tapTempo}
      </Button>
      {open && <TapDialog {...props} onClose={() => setOpen(false)} />}
    </div>
  )
}

function TapDialog({ song, blocks, houseRules, does, onClose }: TapTempoProps & { onClose: () => void }) {
  const { taps, tap, clear } = useTaps()
  const [factor, setFactor] = useState(1)
  const pad = useRef<HTMLButtonElement>(null)
  const says = useId()
  const tapped = useMemo(() => tapTempo(taps.beats), [taps.beats])
  const beatsPerBar = song.grid?.beatsPerBar ?? 4
  const first = tapped && taps.start !== null ? firstBeat(tapped, taps.ones, taps.start, beatsPerBar) : undefined
  const bpm = tapped && tapped.bpm * factor
  const tempoNote = bpm === null ? null : sayTempo(bpm)

  const press = (event: KeyboardEvent) => {
    const meant = tapOf(event.key)
    if (meant === null || event.repeat || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    if (meant === 'clear') clear()
    else tap(meant, event.timeStamp)
  }
  const take = () => {
    if (bpm === null) return
    does.setTempo({ bpm: Number(bpm.toFixed(3)), ...(first !== undefined && { firstBeat: Number(first.toFixed(3)) }) })
    onClose()
  }
  return (
    <Dialog
      open
      title={words.panelsSong.tapTempoOf({ title: song.title })}
      onClose={onClose}
      closeLabel={words.panelsSong.cancel}
      actions={
        <Button tone="solid" disabled={bpm === null || !isTempo(bpm)} onClick={take}>
          {bpm === null ? words.panelsSong.applyTempo : words.panelsSong.applyBpm({ bpm })}
        </Button>
      }
    >
      <div className="tap">
        <p>{words.panelsSong.tapAlong}</p>
        <button
          type="button"
          ref={pad}
          // The pad is what the dialog is opened for.
          // biome-ignore lint/a11y/noAutofocus: keys tap here as soon as the dialog stands
          autoFocus
          className="tap-pad"
          aria-describedby={says}
          onPointerDown={(event) => event.button === 0 && tap('beat', event.timeStamp)}
          onKeyDown={press}
          // Some browsers press a button as the space bar comes up; it has been counted as it went down.
          onKeyUp={(event) => event.key === ' ' && event.preventDefault()}
          // Enter, and whoever presses it without a pointer or a letter.
          onClick={(event) => event.detail === 0 && tap('beat', event.timeStamp)}
        >
          <b>{bpm === null ? words.panelsSong.tap : number(bpm, 2)}</b>
          <span>{bpm === null ? counting(taps.beats.length) : words.panelsSong.plusMinus({ bpm: tapped!.uncertainty * factor })}</span>
        </button>
        <div className="tap-row">
          <TapButton kind="start" onTap={tap} pad={pad}>
            {words.panelsSong.songStarts} <kbd>0</kbd>
          </TapButton>
          <TapButton kind="one" onTap={tap} pad={pad}>
            {words.panelsSong.beatOne} <kbd>1</kbd>
          </TapButton>
          <Button tone="quiet" disabled={bpm === null || !isTempo(bpm / 2)} onClick={() => setFactor(factor / 2)}>
            {words.panelsSong.halve}
          </Button>
          <Button tone="quiet" disabled={bpm === null || !isTempo(bpm * 2)} onClick={() => setFactor(factor * 2)}>
            {words.panelsSong.doubled}
          </Button>
          <Button
            tone="quiet"
            disabled={taps.beats.length === 0}
            onClick={() => {
              clear()
              setFactor(1)
              pad.current?.focus()
            }}
          >
            {words.panelsSong.startAgain}
          </Button>
        </div>
        <div id={says} className="tap-says">
          {tapped && bpm !== null ? (
            <>
              <p data-grade={sayTapped(tapped, song.lengthSeconds).grade}>{tell(sayTapped(tapped, song.lengthSeconds).text)}</p>
              {tempoNote !== null && <p>{tell(tempoNote)}</p>}
              <p className="panel-quiet">{words.panelsSong.tapsUsed(tapped)}</p>
              <Cadences bpm={bpm} blocks={blocks} houseRules={houseRules} />
            </>
          ) : (
            taps.beats.length >= FEWEST_TAPS && <p>{words.panelsSong.notSteady(TAPPED)}</p>
          )}
          <p className="panel-quiet">{sayFirst(first, taps.start !== null, taps.ones.length)}</p>
        </div>
      </div>
    </Dialog>
  )
}

interface TapButtonProps {
  kind: Tap
  onTap: (kind: Tap, timeStamp: number) => void
  pad: { readonly current: HTMLElement | null }
  children: ReactNode
}

/** Counts when it goes down, as the pad does; the focus stays on the pad, so that keys go on tapping. */
function TapButton({ kind, onTap, pad, children }: TapButtonProps) {
  return (
    <button
      type="button"
      className="tap-button"
      onPointerDown={(event) => {
        if (event.button !== 0) return
        onTap(kind, event.timeStamp)
        event.preventDefault()
        pad.current?.focus()
      }}
      // Enter and the space bar press a button when it has the focus; a pointer has already counted.
      onClick={(event) => event.detail === 0 && onTap(kind, event.timeStamp)}
    >
      {children}
    </button>
  )
}

const counting = (count: number): string =>
  count === 0
    ? words.panelsSong.onEveryBeat
    : count < FEWEST_TAPS
      ? words.panelsSong.tapsSoFar({ count, least: FEWEST_TAPS })
      : words.panelsSong.tapsNoBeat({ count })

const strokeChoices = () => [
  { strikes: 0.5, label: words.panelsSong.tapHalfTime },
  { strikes: 1, label: words.panelsSong.tapOnBeat },
  { strikes: 2, label: words.panelsSong.tapDoubleTime },
]

/** The cadence each number of strokes per beat gives, and whether the section's blocks suit it. */
function Cadences({ bpm, blocks, houseRules }: { bpm: Bpm; blocks: readonly Block[]; houseRules: Ride['houseRules'] }) {
  const rules = constantsOf({ houseRules })
  return (
    <dl className="tap-cadences">
      {strokeChoices().map(({ strikes, label }) => {
        const rpm = (bpm * strikes) / 2
        const fit = blocks.length > 0 ? sayFit(rpm, blocks, rules) : sayRoom(rpm, rules.seatedMinRpm, rules.seatedMaxRpm)
        return (
          <div key={strikes}>
            <dt>{label}</dt>
            <dd>
              <b>{words.measures.rpm(rpm, 1)}</b> <span className="panel-quiet">{tell(fit ?? '')}</span>
            </dd>
          </div>
        )
      })}
    </dl>
  )
}

const sayRoom = (rpm: number, from: number, to: number): string =>
  rpm < from ? words.panelsSong.tooSlow : rpm > to ? words.panelsSong.tooFast : words.panelsSong.canBeRidden

function sayFirst(first: number | undefined, started: boolean, ones: number): string {
  if (first !== undefined) return words.panelsSong.firstBarAt({ seconds: first })
  if (!started) return words.panelsSong.toPlaceFirst
  return ones === 0 ? words.panelsSong.tapFirstBeats : words.panelsSong.fewMore
}
