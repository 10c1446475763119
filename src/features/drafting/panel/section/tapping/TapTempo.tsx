import { type KeyboardEvent, type ReactNode, useId, useMemo, useRef, useState } from 'react'
import { firstBeat } from '#engine/alignment/firstBeat.ts'
import { sayTapped } from '#engine/alignment/sayTapped.ts'
import { sayTempo } from '#engine/alignment/sayTempo.ts'
import { FEWEST_TAPS, TAPPED, type TappedTempo, tapTempo } from '#engine/alignment/tapTempo.ts'
import { sayFit } from '#engine/cadence/cadenceWindow.ts'
import { constantsOf } from '#engine/constants.ts'
import type { SectionActions } from '#features/drafting/panel/section/actionsOnSection.ts'
import type { Block, Ride, Song } from '#plan/model.ts'
import { isTempo } from '#plan/songs/rescaledSong.ts'
import { Button } from '#ui/Button.tsx'
import { Dialog } from '#ui/Dialog.tsx'
import { formatNumber } from '#units/formatNumber.ts'
import { plural } from '#units/plural.ts'
import type { Bpm } from '#units/units.ts'
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
        tap the tempo
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
      title={`tap the tempo of ${song.title}`}
      onClose={onClose}
      closeLabel="leave it"
      actions={
        <Button tone="solid" disabled={bpm === null || !isTempo(bpm)} onClick={take}>
          {bpm === null ? 'take the tempo' : `take ${formatNumber(bpm, 2)} bpm`}
        </Button>
      }
    >
      <div className="tap">
        <p>Play the song in any player and tap along: any letter or the space bar, or the field below.</p>
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
          <b>{bpm === null ? 'tap' : formatNumber(bpm, 2)}</b>
          <span>{bpm === null ? counting(taps.beats.length) : `bpm, ± ${formatNumber(tapped!.uncertainty * factor, 2)}`}</span>
        </button>
        <div className="tap-row">
          <TapButton kind="start" onTap={tap} pad={pad}>
            the song starts <kbd>0</kbd>
          </TapButton>
          <TapButton kind="one" onTap={tap} pad={pad}>
            the one <kbd>1</kbd>
          </TapButton>
          <Button tone="quiet" disabled={bpm === null || !isTempo(bpm / 2)} onClick={() => setFactor(factor / 2)}>
            half
          </Button>
          <Button tone="quiet" disabled={bpm === null || !isTempo(bpm * 2)} onClick={() => setFactor(factor * 2)}>
            double
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
            start again
          </Button>
        </div>
        <div id={says} className="tap-says">
          {tapped && bpm !== null ? (
            <>
              <p data-grade={sayTapped(tapped, song.lengthSeconds).grade}>{sayTapped(tapped, song.lengthSeconds).text}</p>
              {sayTempo(bpm) && <p>{sayTempo(bpm)}</p>}
              <p className="panel-quiet">{sayUsed(tapped)}</p>
              <Cadences bpm={bpm} blocks={blocks} houseRules={houseRules} />
            </>
          ) : (
            taps.beats.length >= FEWEST_TAPS && <p>{NO_BEAT}</p>
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
  count === 0 ? 'on every beat' : count < FEWEST_TAPS ? `${count} of at least ${FEWEST_TAPS} taps` : `${count} taps, no beat yet`

const NO_BEAT = `These taps keep no one beat between ${TAPPED.from} and ${TAPPED.to} a minute. Tap on evenly, or start again.`

const STRIKES = [
  { strikes: 0.5, label: 'a strike every other beat' },
  { strikes: 1, label: 'one strike a beat' },
  { strikes: 2, label: 'two strikes a beat' },
] as const

/** The cadence each way of striking gives, and whether the section's blocks suit it. */
function Cadences({ bpm, blocks, houseRules }: { bpm: Bpm; blocks: readonly Block[]; houseRules: Ride['houseRules'] }) {
  const rules = constantsOf({ houseRules })
  return (
    <dl className="tap-cadences">
      {STRIKES.map(({ strikes, label }) => {
        const rpm = (bpm * strikes) / 2
        const fit = blocks.length > 0 ? sayFit(rpm, blocks, rules) : sayRoom(rpm, rules.seatedMinRpm, rules.seatedMaxRpm)
        return (
          <div key={strikes}>
            <dt>{label}</dt>
            <dd>
              <b>{formatNumber(rpm, 1)} rpm</b> <span className="panel-quiet">{fit}</span>
            </dd>
          </div>
        )
      })}
    </dl>
  )
}

const sayRoom = (rpm: number, from: number, to: number): string => (rpm < from ? 'too slow' : rpm > to ? 'too fast' : 'can be ridden')

function sayUsed({ used, leftOut, missed, jitter }: TappedTempo): string {
  const without = [leftOut > 0 && `${leftOut} left out`, missed > 0 && `${plural(missed, 'beat')} not tapped`].filter(
    (word) => word !== false,
  )
  return [`${used} taps`, ...without, `scatter ${formatNumber(jitter * 1000, 0)} ms`].join(' · ')
}

function sayFirst(first: number | undefined, started: boolean, ones: number): string {
  if (first !== undefined) return `The first bar begins ${formatNumber(first, 2)} s into the song.`
  if (!started) return 'To place the first beat too, start the song here with 0, then tap some bars’ first beats with 1.'
  return ones === 0 ? 'Tap the first beat of some bars with 1.' : 'A few more beats.'
}
