import { useId, useRef, useState, useSyncExternalStore } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { HABITS, OPEN_HABITS } from '#features/drafting/actions/rehearsing/habits.ts'
import { speaks, type VoiceName } from '#plan/sound/voice.ts'
import type { RehearsalHabits } from '#store/rehearsalSlice.ts'
import type { AppState } from '#store/state.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Dialog } from '#ui/Dialog.tsx'
import { Select } from '#ui/Select.tsx'
import { LANGUAGES } from '#words/language.ts'
import { words } from '#words/words.ts'

const SPEEDS = [0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4, 1.5]

/** The speed beside its bar, and all else of how the leader likes to rehearse in a dialog. */
export function Habits() {
  const store = useAppStore()
  const habits = useApp((state) => state.rehearsalHabits)
  const [open, setOpen] = useState(false)
  const on = { store, open: () => setOpen(true) }
  usePlaceActions(HABITS, () => on)
  const set = (next: Partial<RehearsalHabits>) => store.getState().setRehearsalHabits(next)
  return (
    <>
      <Select
        label={words.rehearsing.speed}
        className="rehearsal-pace"
        value={`${habits.speed}`}
        choices={SPEEDS.map((speed) => ({ value: `${speed}`, label: words.rehearsing.speedOf({ speed }) }))}
        onChange={(speed) => set({ speed: Number(speed) })}
      />
      <ActionButton action={OPEN_HABITS} on={on} tone="quiet" />
      <Dialog open={open} title={words.actions.soundAndVoice} onClose={() => setOpen(false)}>
        <div className="rehearsal-habits">
          <Volume label={words.rehearsing.songs} value={habits.songVolume} onChange={(songVolume) => set({ songVolume })} />
          <Volume label={words.rehearsing.clicks} value={habits.clickVolume} onChange={(clickVolume) => set({ clickVolume })} />
          <Check checked={habits.click} onChange={(click) => set({ click })}>
            {words.rehearsing.clickOverSongs}
          </Check>
          <Check checked={habits.ticks} onChange={(ticks) => set({ ticks })}>
            {words.rehearsing.tick}
          </Check>
          <Check checked={habits.waits} onChange={(waits) => set({ waits })}>
            {words.rehearsing.waits}
          </Check>
          <SpokenCues habits={habits} set={set} />
          <p className="rehearsal-note">{words.rehearsing.soundNote({ full: 1 })}</p>
        </div>
      </Dialog>
    </>
  )
}

const NO_VOICES: VoiceName[] = []

/** Cues said by a voice of the browser, where it has one. */
function SpokenCues({ habits, set }: { habits: RehearsalHabits; set: (next: Partial<RehearsalHabits>) => void }) {
  const voice = useApp((state) => state.voice)
  const language = useApp((state) => state.shown?.language ?? 'en')
  const all = useNames(voice)
  const names = all.filter(({ lang }) => speaks(lang, language))
  if (all.length === 0) return <p className="rehearsal-note">{words.rehearsing.noVoice}</p>
  return (
    <>
      <Check checked={habits.speaks} onChange={(speaks) => set({ speaks })}>
        {words.rehearsing.speakCues}
      </Check>
      {habits.speaks && names.length === 0 && <p className="rehearsal-note">{words.speech.noVoice({ language: LANGUAGES[language] })}</p>}
      {habits.speaks && names.length > 0 && (
        <Select
          label={words.rehearsing.voice}
          value={names.some(({ id }) => id === habits.voice) ? habits.voice : ''}
          choices={[{ value: '', label: words.rehearsing.browserVoice }, ...names.map(({ id, name }) => ({ value: id, label: name }))]}
          onChange={(chosen) => set({ voice: chosen })}
        />
      )}
    </>
  )
}

/** The voices there are; some browsers know them only a while after they are first asked. */
function useNames(voice: AppState['voice']): VoiceName[] {
  const known = useRef(NO_VOICES)
  return useSyncExternalStore(
    (listener) => voice?.onNames(listener) ?? (() => {}),
    () => {
      const names = voice?.names() ?? NO_VOICES
      const same = names.length === known.current.length && names.every(({ id }, i) => id === known.current[i]!.id)
      if (!same) known.current = names
      return known.current
    },
  )
}

function Check({ checked, onChange, children }: { checked: boolean; onChange: (checked: boolean) => void; children: string }) {
  return (
    <label className="rehearsal-check">
      <input type="checkbox" checked={checked} onChange={(event) => onChange(event.currentTarget.checked)} />
      <span>{children}</span>
    </label>
  )
}

function Volume({ label, value, onChange }: { label: string; value: number; onChange: (value: number) => void }) {
  const id = useId()
  return (
    <div className="rehearsal-volume">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={100}
        value={Math.round(value * 100)}
        onChange={(event) => onChange(Number(event.currentTarget.value) / 100)}
      />
    </div>
  )
}
