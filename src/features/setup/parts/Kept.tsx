import { useState } from 'react'
import type { Profile, ProfileKind, ProfileOf } from '#plan/kept/profile.ts'
import { bikeName } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { tell, words } from '#words/words.ts'

interface Props<Kind extends ProfileKind> {
  kind: Kind
  /** What is kept: "saved bikes". */
  title: string
  /** Said while nothing is kept. */
  empty: string
  /** Words under a kept one's name. */
  say: (profile: ProfileOf<Kind>) => string
  /** Whether the ride has this very one. */
  isInUse: (profile: ProfileOf<Kind>) => boolean
  onUse: (profile: ProfileOf<Kind>) => void
  /** The ride's own as a profile of that name, under an id that is given where it has one. */
  make: (name: string) => Profile
  /** The name to keep it under; typed by the user where absent. */
  name?: string
  /** Words of the button that keeps. */
  keepLabel: string
}

/** What is kept on this device for other rides: keep the ride's own, use a kept one, remove it. */
export function Kept<Kind extends ProfileKind>({ kind, title, empty, say, isInUse, onUse, make, name, keepLabel }: Props<Kind>) {
  const all = useApp((state) => state.profiles)
  const canKeep = useApp((state) => state.keepsProfiles)
  const keepProfile = useApp((state) => state.keepProfile)
  const removeProfile = useApp((state) => state.removeProfile)
  const kept = all.filter((profile): profile is ProfileOf<Kind> => profile.kind === kind)
  return (
    <section className="setup-part" aria-label={words.setup.onDevice({ title })}>
      <h2>{words.setup.onDevice({ title })}</h2>
      {kept.length === 0 && <p className="setup-quiet">{empty}</p>}
      <ul className="setup-kept">
        {kept.map((profile) => {
          const inUse = isInUse(profile)
          return (
            <li key={profile.id}>
              <p>
                <b>{called(profile)}</b>
                <span className="setup-quiet">{say(profile)}</span>
              </p>
              {inUse ? (
                <span className="setup-mark">{words.setup.inUse}</span>
              ) : (
                <Button onClick={() => onUse(profile)} aria-label={words.setup.takeKept({ name: called(profile) })}>
                  {words.setup.use}
                </Button>
              )}
              <Button
                tone="quiet"
                onClick={() => void removeProfile(profile.id)}
                aria-label={words.setup.removeKept({ name: called(profile) })}
              >
                {words.setup.remove}
              </Button>
            </li>
          )
        })}
      </ul>
      {!canKeep && <p className="setup-quiet">{words.setup.nothingKept}</p>}
      {canKeep && !kept.some(isInUse) && <Keep name={name} label={keepLabel} onKeep={(chosen) => void keepProfile(make(chosen))} />}
    </section>
  )
}

/** A typical bike by its name in the language of the page. */
const called = (profile: Profile): string => (profile.kind === 'bike' ? tell(bikeName(profile.bike)) : profile.name)

function Keep({ name, label, onKeep }: { name?: string; label: string; onKeep: (name: string) => void }) {
  const [typed, setTyped] = useState('')
  const chosen = (name ?? typed).trim()
  return (
    <form
      className="setup-keep"
      onSubmit={(event) => {
        event.preventDefault()
        if (chosen !== '') onKeep(chosen)
        setTyped('')
      }}
    >
      {name === undefined && (
        <div className="ui-field">
          <input
            type="text"
            aria-label={words.setup.keepName}
            placeholder={words.setup.keepPlaceholder}
            maxLength={120}
            value={typed}
            onChange={(event) => setTyped(event.currentTarget.value)}
          />
        </div>
      )}
      <Button type="submit" tone="action" disabled={chosen === ''}>
        {label}
      </Button>
    </form>
  )
}
