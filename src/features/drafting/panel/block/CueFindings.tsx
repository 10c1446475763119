import { useMemo } from 'react'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { tell } from '#words/words.ts'

/** What is noticed about the words of one cue, with the repairs; what was put aside stays aside. */
export function CueFindings({ cueId }: { cueId: string }) {
  const store = useAppStore()
  const findings = useApp((state) => state.report?.findings)
  const setAside = useApp((state) => state.ride?.setAside)
  const own = useMemo(
    () => findings?.filter(({ id, rule }) => id === `${rule}:${cueId}` && ABOUT_WORDS.has(rule) && !setAside?.includes(id)) ?? [],
    [findings, setAside, cueId],
  )
  return own.map(({ id, text, fixes }) => (
    <div key={id} className="panel-cue-finding panel-edit-only">
      <p>{tell(text)}</p>
      {fixes.map((fix) => (
        <Button key={tell(fix.label)} tone="action" onClick={() => store.getState().run(fix.command)}>
          {tell(fix.label)}
        </Button>
      ))}
    </div>
  ))
}

/** Rules whose findings are about one cue and are known by its id. */
const ABOUT_WORDS: ReadonlySet<string> = new Set([
  'cueNumbers',
  'cueLate',
  'cuePlace',
  'cueRoom',
  'cueCollisions',
  'quietKept',
  'breathlessWords',
  'resistanceFirst',
])
