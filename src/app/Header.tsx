import type { MouseEvent } from 'react'
import { ActionButton } from '#actions/ActionButton.tsx'
import { useAction } from '#actions/useAction.ts'
import { isUnderWay } from '#plan/songs/heardSong.ts'
import { isReadOnly } from '#store/placeSlice.ts'
import type { AppState } from '#store/state.ts'
import { useApp } from '#store/useApp.ts'
import type { Theme } from '#store/viewSlice.ts'
import { Button } from '#ui/Button.tsx'
import { Select } from '#ui/Select.tsx'
import { LANGUAGES, type Language } from '#words/language.ts'
import { tell, words } from '#words/words.ts'
import { FIND } from './actions/find.ts'
import { type GoTo, MY_RIDES, OTHER_PLACES, PLACES_OF_RIDE, TO_SONGS } from './actions/goTo.ts'
import { KEYS } from './actions/keys.ts'
import { RIDE_DETAILS } from './actions/rideDetails.ts'
import { useShellGround } from './actions/shellGround.ts'
import { REDO, UNDO, UNDO_LIST } from './actions/undo.ts'
import { placeFragment } from './fragment.ts'
import { useLanguage } from './LanguageScope.tsx'
import { ReadOnBike } from './ReadOnBike.tsx'
import './Header.css'

const THEMES: readonly Theme[] = ['auto', 'light', 'dark']

const SAVED_STATES = ['saved', 'oneCopy', 'saving', 'typing', 'failed', 'deleted', 'demo'] as const

/** What can be said of the open ride; never that it is saved while some of it is not. */
function savedState({ isDemo, saved, oneCopy, typing }: AppState): (typeof SAVED_STATES)[number] {
  if (saved === 'failed' || saved === 'deleted') return saved
  if (typing) return 'typing'
  if (isDemo) return 'demo'
  return saved === 'saved' && oneCopy ? 'oneCopy' : saved
}

/** The head of every page: which ride, where in it, the way back, and what is kept. */
export function Header() {
  const on = useShellGround()
  const place = useApp((state) => state.place)
  const hasRide = useApp((state) => state.shown !== null)
  const theme = useApp((state) => state.theme)
  const setTheme = useApp((state) => state.setTheme)
  const inRide = hasRide && place !== 'start'
  return (
    <header className="app-head">
      <PlaceLink to={MY_RIDES} className="app-name" current={place === 'start'}>
        {place === 'start' ? 'Ridewright' : tell(MY_RIDES.action.name)}
      </PlaceLink>
      {inRide && <Title />}
      {inRide && <Tools />}
      <nav className="app-places" aria-label={words.app.places} data-push={!inRide}>
        {(inRide ? PLACES_OF_RIDE : OTHER_PLACES).map((to) => (
          <PlaceLink key={to.place} to={to} className="app-place" current={place === to.place}>
            {tell(to.action.name)}
          </PlaceLink>
        ))}
      </nav>
      <div className="app-tools app-shell">
        <Reading />
        <ActionButton action={FIND} on={on} tone="quiet" className="app-find-button" aria-label={words.search.findTell} figure={<Lens />} />
        <ActionButton action={KEYS} on={on} tone="quiet" className="app-keys-button" />
        {/* Chosen once: the head of a ride has no room to spare. */}
        {!inRide && <ChooseLanguage />}
        <svg className="app-theme-figure" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
          <circle cx="8" cy="8" r="6.25" fill="none" stroke="currentColor" strokeWidth="1.5" />
          <path d="M8 2v12a6 6 0 0 0 0-12z" fill="currentColor" />
        </svg>
        <Select
          className="app-choice"
          label={words.app.theme}
          hideLabel
          value={theme}
          choices={THEMES.map((value) => ({ value, label: words.app.themeName({ theme: value }) }))}
          onChange={setTheme}
        />
      </div>
    </header>
  )
}

/** What searching is drawn as everywhere. */
function Lens() {
  return (
    <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      <circle cx="6.5" cy="6.5" r="4.75" fill="none" stroke="currentColor" strokeWidth="1.5" />
      <path d="M10 10l4.5 4.5" stroke="currentColor" strokeWidth="1.5" strokeLinecap="round" />
    </svg>
  )
}

/** Each language by its own name, for whoever cannot read this one. */
const LANGUAGE_CHOICES = Object.entries(LANGUAGES).map(([value, label]) => ({ value: value as Language, label }))

function ChooseLanguage() {
  const { language, choose } = useLanguage()
  return (
    <Select
      className="app-choice"
      label={words.languages.label}
      hideLabel
      value={language}
      choices={LANGUAGE_CHOICES}
      onChange={(next) => void choose(next)}
    />
  )
}

/** What is open; a press leads to its details, from wherever one is. */
function Title() {
  const title = useApp((state) => state.shown?.title)
  const meta = useApp(metaLine)
  const { props } = useAction(RIDE_DETAILS, useShellGround())
  return (
    <div className="app-title">
      <h1>
        <button type="button" className="app-title-button" {...props}>
          {title || words.names.untitled}
        </button>
      </h1>
      <div className="app-meta">
        <span>{meta} ·</span>
        <ReadOnBike />
      </div>
    </div>
  )
}

/** "advanced · 20 min"; the bike stands beside it, as a choice. */
const metaLine = ({ shown }: AppState): string =>
  shown ? words.app.classLength({ level: words.names.level({ level: shown.level }), minutes: shown.slotMinutes }) : ''

/** Undo, redo and the state of saving; none of them means anything for a shared ride. */
function Tools() {
  const readOnly = useApp(isReadOnly)
  const on = useShellGround()
  const saved = useApp(savedState)
  if (readOnly) return <span className="app-saved">{words.app.readOnly}</span>
  return (
    <div className="app-tools">
      <span
        className="app-saved"
        data-urgent={saved === 'failed' || saved === 'deleted'}
        // All of them, from which the room for the longest is taken.
        data-words={SAVED_STATES.map((state) => words.app.savedState({ saved: state })).join('\n')}
        title={words.app.savedMeans(saved)}
      >
        {words.app.savedState({ saved })}
      </span>
      <ActionButton action={UNDO} on={on} tone="quiet" />
      <ActionButton action={REDO} on={on} tone="quiet" />
      <UndoListButton />
    </div>
  )
}

/** The list of all changes, right beside the two buttons that take one step. */
function UndoListButton() {
  const { words: name, props } = useAction(UNDO_LIST, useShellGround())
  return (
    <Button tone="quiet" className="app-undo-list" aria-label={name} aria-haspopup="menu" {...props}>
      <svg viewBox="0 0 16 16" width="14" height="14" aria-hidden="true">
        <path d="M3.5 6 8 10.5 12.5 6" fill="none" stroke="currentColor" strokeWidth="1.5" />
      </svg>
    </Button>
  )
}

/** How many files of music are still to be read, wherever one is; a press goes to where they stand one by one. */
function Reading() {
  const left = useApp((state) => state.hearings.filter(({ hearing }) => isUnderWay(hearing)).length)
  const on = useShellGround()
  if (left === 0) return null
  return (
    <Button tone="quiet" className="app-reading" title={words.app.toSongs} onClick={(event) => TO_SONGS.do(on, event)}>
      {words.app.reading({ count: left })}
    </Button>
  )
}

interface PlaceLinkProps {
  to: GoTo
  className: string
  current?: boolean
  children: string
}

/** A real link to a place: it can be kept and opened in another tab; a plain press stays on the page. */
function PlaceLink({ to: { place, action }, className, current, children }: PlaceLinkProps) {
  const on = useShellGround()
  const rideId = useApp((state) => (place === 'start' ? undefined : state.ride?.id))
  const go = (event: MouseEvent) => {
    if (event.metaKey || event.ctrlKey || event.shiftKey) return
    event.preventDefault()
    action.do(on, event)
  }
  return (
    <a
      className={className}
      href={placeFragment(place, rideId)}
      aria-current={current ? 'page' : undefined}
      data-action={action.id}
      onClick={go}
    >
      {children}
    </a>
  )
}
