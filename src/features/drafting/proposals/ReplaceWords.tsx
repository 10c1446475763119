import { useEffect, useMemo, useRef, useState } from 'react'
import { Proposal } from '#features/drafting/proposals/Proposal.tsx'
import { useHeldPreview } from '#features/drafting/useHeldPreview.ts'
import { refusedTexts, replacedHit, replaceWords } from '#plan/commands/replaceWords.ts'
import type { Ride } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import { findBlock, findSection, findSet } from '#plan/places.ts'
import { findWords, type WordHit } from '#plan/texts/findWords.ts'
import type { TextKind } from '#plan/texts/ownTexts.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Segmented } from '#ui/Segmented.tsx'
import { useKeptState } from '#ui/useKeptState.ts'
import { tell, words } from '#words/words.ts'
import './replaceWords.css'

interface ReplaceWordsProps {
  /** Goes to a block, a set or a song. */
  onShow: (id: string) => void
  onClose: () => void
}

const PARTS = ['all', 'cues', 'names', 'notes'] as const
type Part = (typeof PARTS)[number]

const NOTES: ReadonlySet<TextKind> = new Set(['aim', 'standIn', 'privateNotes', 'sectionNotes', 'feel', 'easier', 'harder', 'blockNotes'])

const partOf = (kind: TextKind): Part => (kind === 'cue' ? 'cues' : NOTES.has(kind) ? 'notes' : 'names')

/** Letters around a hit that are shown with it. */
const AROUND = 44

/** Words of this ride found and replaced: every place is shown as it is and as it would be, and those that are meant change as one step. */
export function ReplaceWords({ onShow, onClose }: ReplaceWordsProps) {
  const store = useAppStore()
  // The committed ride: what is shown already has the new words.
  const ride = useApp((state) => state.ride)
  const [asked, setAsked, forget] = useKeptState('replaceWords', { find: '', by: '', matchCase: false, wholeWords: false })
  const field = useRef<HTMLInputElement>(null)
  // Whoever opens this types next; every other offer is read first, so it begins at its heading.
  useEffect(() => field.current?.select(), [])
  const [part, setPart] = useState<Part>('all')
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set())
  const { find, by, matchCase, wholeWords } = asked
  const search = useMemo(() => ({ words: find, matchCase, wholeWords }), [find, matchCase, wholeWords])
  const hits = useMemo(
    () => (ride ? findWords(ride, search).filter(({ place }) => part === 'all' || partOf(place.kind) === part) : []),
    [ride, search, part],
  )
  const replacing = useMemo(
    () => ({ search, by, hits: new Set(hits.flatMap(({ id }) => (left.has(id) ? [] : [id]))) }),
    [search, by, hits, left],
  )
  const refused = useMemo(() => (ride ? refusedTexts(ride, replacing) : []), [ride, replacing])
  const count = replacing.hits.size
  const command = useMemo(
    () => (ride && count > 0 && refused.length === 0 ? replaceWords(ride, replacing) : null),
    [ride, count, refused, replacing],
  )
  const offered = command && ride && command.apply(ride) !== ride ? command : null
  useHeldPreview(offered)
  if (!ride) return null

  const { replacing: said } = words
  const change = (next: Partial<typeof asked>) => {
    setAsked((before) => ({ ...before, ...next }))
    setLeft(new Set())
  }
  const take = () => {
    if (!offered || !store.getState().run(offered)) return
    forget()
    onClose()
  }
  const isSought = find.trim() !== ''
  return (
    <Proposal
      title={said.title}
      where={said.where}
      onClose={onClose}
      actions={
        isSought && (
          <Button tone="solid" disabled={!offered} onClick={take}>
            {by === '' ? said.delete({ count }) : said.replace({ count })}
          </Button>
        )
      }
    >
      <div className="replace-words">
        <label className="ui-field">
          <span className="ui-field-label">{said.find}</span>
          <input ref={field} type="search" value={find} onChange={(event) => change({ find: event.currentTarget.value })} />
        </label>
        <label className="ui-field">
          <span className="ui-field-label">{said.by}</span>
          <input type="text" value={by} autoComplete="off" onChange={(event) => setAsked({ ...asked, by: event.currentTarget.value })} />
        </label>
      </div>
      <div className="replace-how">
        <label className="panel-check">
          <input type="checkbox" checked={matchCase} onChange={(event) => change({ matchCase: event.currentTarget.checked })} />
          {said.matchCase}
        </label>
        <label className="panel-check">
          <input type="checkbox" checked={wholeWords} onChange={(event) => change({ wholeWords: event.currentTarget.checked })} />
          {said.wholeWords}
        </label>
      </div>
      <Segmented
        label={said.lookIn}
        value={part}
        choices={PARTS.map((value) => ({ value, label: said.part({ part: value }) }))}
        onChange={setPart}
      />
      {isSought && (
        <div className="replace-count">
          <p role="status">{said.found({ chosen: count, count: hits.length })}</p>
          {hits.length > 1 && (
            <Button tone="quiet" onClick={() => setLeft(count === 0 ? new Set() : new Set(hits.map(({ id }) => id)))}>
              {count === 0 ? said.all : said.none}
            </Button>
          )}
        </div>
      )}
      {refused.map(({ place, problem, length }) => (
        <p key={place.key} role="alert">
          {problem === 'long'
            ? said.tooLong({ kind: said.kind({ kind: place.kind }), length, most: place.most })
            : said.needed({ kind: said.kind({ kind: place.kind }) })}
        </p>
      ))}
      <ul className="proposal-list">
        {hits.map((hit) => {
          const where = whereOf(ride, hit)
          const kind = said.kind({ kind: hit.place.kind })
          const to = hit.place.itemId ?? hit.place.sectionId
          const [before, after] = around(hit)
          return (
            <li key={hit.id} className="replace-hit">
              <input
                type="checkbox"
                aria-label={said.hit({ kind, where, text: `${before}${hit.text.slice(hit.from, hit.to)}${after}` })}
                checked={!left.has(hit.id)}
                onChange={(event) => {
                  const next = new Set(left)
                  if (event.currentTarget.checked) next.delete(hit.id)
                  else next.add(hit.id)
                  setLeft(next)
                }}
              />
              <div>
                <p className="panel-note">
                  {kind}
                  {to !== undefined && (
                    <>
                      {' '}
                      <button type="button" className="panel-link" title={said.show} onClick={() => onShow(to)}>
                        {where}
                      </button>
                    </>
                  )}
                </p>
                <p>
                  {before}
                  <del>{hit.text.slice(hit.from, hit.to)}</del>
                  {by !== '' && <ins>{replacedHit(hit, search, by)}</ins>}
                  {after}
                </p>
              </div>
            </li>
          )
        })}
      </ul>
    </Proposal>
  )
}

/** The block, set or song that a text belongs to, by name. */
function whereOf(ride: Ride, { place: { itemId, sectionId } }: WordHit): string {
  const item = itemId === undefined ? undefined : (findBlock(ride, itemId)?.block ?? findSet(ride, itemId)?.set)
  if (item) return tell(itemName(item))
  const section = sectionId === undefined ? undefined : findSection(ride, sectionId)
  return section ? tell(sectionName(ride, section)) : ''
}

/** What stands before and after a hit, shortened. */
function around({ text, from, to }: WordHit): [string, string] {
  const before = text.slice(0, from)
  const after = text.slice(to)
  return [before.length > AROUND ? `… ${before.slice(-AROUND)}` : before, after.length > AROUND ? `${after.slice(0, AROUND)} …` : after]
}
