import { useMemo } from 'react'
import { levelChoices } from '#features/drafting/panel/choices.ts'
import { BikeSummary } from '#features/drafting/panel/ride/BikeSummary.tsx'
import { FormPoints } from '#features/drafting/panel/ride/FormPoints.tsx'
import { LeaderFields } from '#features/drafting/panel/ride/LeaderFields.tsx'
import { LinkSongs } from '#features/drafting/panel/ride/LinkSongs.tsx'
import { ParentNote } from '#features/drafting/panel/ride/ParentNote.tsx'
import { RidersSummary } from '#features/drafting/panel/ride/RidersSummary.tsx'
import { parsePause, parseSlot } from '#features/drafting/panel/ride/rules.ts'
import { ShapeGroup } from '#features/drafting/panel/ride/ShapeGroup.tsx'
import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import { patchRide, type RidePatch } from '#plan/commands/patchRide.ts'
import { setDatum } from '#plan/commands/setDatum.ts'
import type { Leader, Ride } from '#plan/model.ts'
import type { AppState, AppStore } from '#store/state.ts'
import { type Told, useApp, useAppStore } from '#store/useApp.ts'
import type { SetupPart } from '#store/viewSlice.ts'
import type { Choice } from '#ui/Select.tsx'
import { parseWallClock } from '#units/parseWallClock.ts'
import type { Seconds } from '#units/units.ts'
import { clock, number, wallClock } from '#words/forms.ts'
import { LANGUAGES, type Language } from '#words/language.ts'
import { words } from '#words/words.ts'

const roomChoices = (): readonly Choice<NonNullable<Ride['room']>>[] => [
  { value: 'studio', label: words.panelsRide.studio },
  { value: 'online', label: words.panelsRide.online },
]

/** Each by its own name, so that it is found by whoever speaks it. */
const SPOKEN: readonly Choice<Language>[] = (Object.keys(LANGUAGES) as Language[]).map((value) => ({ value, label: LANGUAGES[value] }))

/** The ride as a whole: what it is for, the length it has to fit, the bike it is written for and who teaches it. */
export function RidePanel({ onShow }: { onShow?: (blockId: string) => void }) {
  const store = useAppStore()
  const does = useMemo(() => actionsOnRide(store), [store])
  const { edit } = does
  const title = useRide((ride) => ride.title)
  const aim = useRide((ride) => ride.aim)
  const level = useRide((ride) => ride.level)
  const language = useRide((ride) => ride.language)
  const slotMinutes = useRide((ride) => ride.slotMinutes)
  const startsAt = useRide((ride) => ride.startsAt)
  const briefingSeconds = useRide((ride) => ride.briefingSeconds)
  const clearUpSeconds = useRide((ride) => ride.clearUpSeconds)
  const room = useRide((ride) => ride.room)
  const location = useRide((ride) => ride.location)
  const bike = useRide((ride) => ride.bike)
  const datum = useRide((ride) => ride.datum)
  const leaders = useRide((ride) => ride.leaders)
  const privateNotes = useRide((ride) => ride.privateNotes)
  return (
    <>
      <header className="panel-header">
        <h2>{words.panels.ride}</h2>
        <p className="panel-where">{words.panelsRide.choose}</p>
        <ParentNote />
      </header>
      <div className="panel-rows">
        <TextRow
          label={words.panels.title}
          value={title}
          required={words.panelsRide.titleNeeded}
          longest={300}
          onChange={(text) => text !== undefined && edit({ title: text })}
        />
        <TextRow
          label={words.panelsRide.goal}
          value={aim}
          rows={2}
          placeholder={words.panelsRide.goalHint}
          longest={300}
          onChange={(text) => edit({ aim: text })}
        />
        <SelectRow label={words.panels.level} value={level} choices={levelChoices()} onChange={(next) => edit({ level: next })} />
        <SelectRow label={words.speech.language} value={language ?? 'en'} choices={SPOKEN} onChange={(next) => edit({ language: next })} />
        <QuantityRow
          label={words.panelsRide.classLength}
          value={slotMinutes}
          unit={words.panelsRide.minutes}
          format={(minutes) => number(minutes, 1)}
          parse={parseSlot}
          onChange={(minutes) => edit({ slotMinutes: minutes })}
          step={(minutes, direction, large) => Math.min(360, Math.max(5, minutes + direction * (large ? 15 : 5)))}
        />
        <OptionalQuantityRow
          label={words.panelsRide.startsAt}
          value={startsAt}
          placeholder={wallClock('18:30')}
          format={wallClock}
          parse={parseWallClock}
          onChange={(time) => edit({ startsAt: time })}
        />
        <QuantityRow
          label={words.panelsRide.welcome}
          value={briefingSeconds}
          {...PAUSE}
          onChange={(seconds) => edit({ briefingSeconds: seconds })}
        />
        <QuantityRow
          label={words.panelsRide.wipeDown}
          value={clearUpSeconds}
          {...PAUSE}
          onChange={(seconds) => edit({ clearUpSeconds: seconds })}
        />
        <SelectRow
          label={words.panelsRide.room}
          value={room ?? 'studio'}
          choices={roomChoices()}
          onChange={(next) => edit({ room: next })}
        />
        <TextRow
          label={words.panelsRide.location}
          value={location}
          placeholder={words.panelsRide.locationExample}
          longest={120}
          onChange={(text) => edit({ location: text })}
        />
      </div>
      <LinkSongs />
      <ShapeGroup />
      <BikeSummary bike={bike} datum={datum} onDatum={does.setDatum} onOpen={does.openBike} />
      <RidersSummary onShow={onShow} onOpen={does.openRiders} />
      <LeaderFields leaders={leaders} newId={does.newId} onChange={does.setLeaders} />
      <FormPoints />
      <section className="panel-group" aria-label={words.panelsRide.privateNotes}>
        <h3>{words.panelsRide.privateNotes}</h3>
        <div className="panel-rows">
          <TextRow
            label={words.panels.notes}
            value={privateNotes}
            rows={2}
            placeholder={words.panelsRide.privateHint}
            hint={words.panelsRide.privateKept}
            longest={10_000}
            onChange={(text) => edit({ privateNotes: text })}
          />
        </div>
      </section>
    </>
  )
}

const useRide = <Part,>(read: (ride: Ride) => Told<Part>): Part => useApp<Part>((state: AppState) => read(state.shown!))

const PAUSE = {
  format: (seconds: Seconds) => clock(seconds),
  parse: parsePause,
  step: (seconds: Seconds, direction: 1 | -1, large: boolean) =>
    Math.min(3600, Math.max(0, Math.round(seconds) + direction * (large ? 60 : 15))),
}

/** What the panel can do to the ride, each as one undo step. */
function actionsOnRide(store: AppStore) {
  const now = () => store.getState()
  const edit = (patch: RidePatch) => void now().run(patchRide(patch))
  const goTo = (part: SetupPart) => {
    now().showSetupPart(part)
    now().setPlace('setup')
  }
  return {
    edit,
    setDatum: (datum: Ride['datum']) => void now().run(setDatum(datum)),
    openBike: () => goTo('bike'),
    openRiders: () => goTo('riders'),
    setLeaders: (leaders: Leader[]) => edit({ leaders }),
    newId: () => now().newId(),
  }
}
