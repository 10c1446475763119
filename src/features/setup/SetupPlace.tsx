import { isReadOnly } from '#store/placeSlice.ts'
import { useApp } from '#store/useApp.ts'
import type { SetupPart } from '#store/viewSlice.ts'
import { Segmented } from '#ui/Segmented.tsx'
import type { Choice } from '#ui/Select.tsx'
import { BikePart } from './bike/BikePart.tsx'
import { RidersPart } from './riders/RidersPart.tsx'
import { RulesPart } from './rules/RulesPart.tsx'
import './setup.css'

const PARTS: readonly Choice<SetupPart>[] = [
  { value: 'bike', label: 'bike' },
  { value: 'riders', label: 'riders' },
  { value: 'rules', label: 'house rules' },
]

const LEDES: Record<SetupPart, string> = {
  bike: 'The scale every total of this ride is written in, and what it weighs on the legs.',
  riders: 'Whom the demand, heart and reserve of this ride are modelled for.',
  rules: 'The numbers this room plans by. Findings follow them; they warn and never block.',
}

/** What a ride is planned for: the bike, the people, and the rules of the room. */
export function SetupPlace() {
  const part = useApp((state) => state.setupPart)
  const showPart = useApp((state) => state.showSetupPart)
  const isOpen = useApp((state) => state.shown !== null)
  const readOnly = useApp(isReadOnly)
  if (!isOpen) return null
  return (
    <div className="setup">
      <header className="setup-head">
        <h1>Bikes and riders</h1>
        <Segmented label="part" hideLabel value={part} choices={PARTS} onChange={showPart} />
        <p className="setup-lede">{LEDES[part]}</p>
      </header>
      <fieldset className="setup-body" disabled={readOnly}>
        <legend className="ui-hidden">{PARTS.find(({ value }) => value === part)!.label}</legend>
        {part === 'bike' && <BikePart />}
        {part === 'riders' && <RidersPart />}
        {part === 'rules' && <RulesPart />}
      </fieldset>
    </div>
  )
}
