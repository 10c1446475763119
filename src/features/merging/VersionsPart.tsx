import { type FormEvent, useEffect, useState } from 'react'
import type { VersionHead } from '#plan/kept/version.ts'
import { isReadOnly } from '#store/placeSlice.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Disclosure } from '#ui/Disclosure.tsx'
import { words } from '#words/words.ts'
import { CompareVersions } from './CompareVersions.tsx'
import { titleOf, whenOf } from './versionWords.ts'
import './versions.css'

/** The versions of the open ride: kept under a name, or by themselves when it went out or came in. */
export function VersionsPart() {
  const store = useAppStore()
  const rideId = useApp((state) => state.ride?.id)
  const readOnly = useApp(isReadOnly)
  const keeps = useApp((state) => state.keepsVersions)
  const all = useApp((state) => state.versions)
  const [compared, setCompared] = useState<string | null>(null)
  useEffect(() => void store.getState().refreshVersions(), [store])
  if (rideId === undefined || readOnly || !keeps) return null

  const versions = (all ?? []).filter((version) => version.rideId === rideId)
  const named = versions.filter(({ kind }) => kind === 'named')
  const others = versions.filter(({ kind }) => kind !== 'named')
  const rows = (list: readonly VersionHead[]) => (
    <ul className="versions-list">
      {list.map((version) => (
        <VersionRow key={version.id} version={version} onCompare={() => setCompared(version.id)} />
      ))}
    </ul>
  )
  return (
    <section className="versions" aria-labelledby="versions-head">
      <h2 id="versions-head">{words.merging.versions}</h2>
      <p>{words.merging.versionsAbout}</p>
      <KeepVersion />
      {rows(named)}
      <Removed rideId={rideId} />
      {others.length > 0 && <Disclosure summary={words.merging.savedForYou({ count: others.length })}>{rows(others)}</Disclosure>}
      <CompareVersions from={compared} versions={versions} onClose={() => setCompared(null)} />
    </section>
  )
}

function KeepVersion() {
  const store = useAppStore()
  const [name, setName] = useState('')
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    if (name.trim() !== '' && (await store.getState().keepVersion(name.trim()))) setName('')
  }
  return (
    <form className="versions-keep" onSubmit={(event) => void keep(event)}>
      <label className="ui-field">
        <span className="ui-field-label">{words.merging.versionName}</span>
        <span className="ui-field-line">
          <input
            value={name}
            onChange={(event) => setName(event.target.value)}
            placeholder={words.merging.versionExample}
            maxLength={120}
          />
        </span>
      </label>
      <Button type="submit" disabled={name.trim() === ''}>
        {words.merging.saveVersion}
      </Button>
    </form>
  )
}

function VersionRow({ version, onCompare }: { version: VersionHead; onCompare: () => void }) {
  const store = useAppStore()
  const title = titleOf(version)
  return (
    <li className="versions-row">
      <span>
        <b>{title}</b> <span className="versions-when">{whenOf(version)}</span>
      </span>
      <span className="versions-actions">
        <Button tone="quiet" onClick={onCompare} aria-label={words.merging.compareNamed({ version: title })}>
          {words.merging.compare}
        </Button>
        <Button
          tone="quiet"
          onClick={() => void store.getState().restoreVersion(version.id)}
          aria-label={words.merging.restoreNamed({ version: title })}
        >
          {words.merging.restore}
        </Button>
        <Button
          tone="quiet"
          onClick={() => void store.getState().removeVersion(version.id)}
          aria-label={words.merging.deleteNamed({ version: title })}
        >
          {words.merging.delete}
        </Button>
      </span>
    </li>
  )
}

function Removed({ rideId }: { rideId: string }) {
  const store = useAppStore()
  const removed = useApp((state) => state.removedVersions)
  return removed
    .filter((version) => version.rideId === rideId)
    .map((version) => (
      <p key={version.id} className="versions-removed">
        {words.merging.deleted({ version: titleOf(version) })}{' '}
        <Button tone="action" onClick={() => void store.getState().putVersionBack(version.id)}>
          {words.merging.undelete}
        </Button>
      </p>
    ))
}
