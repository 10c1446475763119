import { isReadOnly } from '#store/placeSlice.ts'
import { useApp } from '#store/useApp.ts'
import type { SetupPart } from '#store/viewSlice.ts'
import { Segmented } from '#ui/Segmented.tsx'
import { words } from '#words/words.ts'
import { BikePart } from './bike/BikePart.tsx'
import { RidersPart } from './riders/RidersPart.tsx'
import { RulesPart } from './rules/RulesPart.tsx'
import './setup.css'

const PARTS: readonly SetupPart[] = ['bike', 'riders', 'rules']

/** What a ride is planned for: the bike, the people, and the rules of the studio. */
export function SetupPlace() {
  const part = useApp((state) => state.setupPart)
  const showPart = useApp((state) => state.showSetupPart)
  const isOpen = useApp((state) => state.shown !== null)
  const readOnly = useApp(isReadOnly)
  if (!isOpen) return null
  const choices = PARTS.map((each) => ({ value: each, label: words.setup.partName({ part: each }) }))
  return (
    <div className="setup">
      <header className="setup-head">
        <h1>{words.setup.heading}</h1>
        <Segmented label={words.setup.part} hideLabel value={part} choices={choices} onChange={showPart} />
        <p className="setup-lede">{words.setup.lede({ part })}</p>
      </header>
      <fieldset className="setup-body" disabled={readOnly}>
        <legend className="ui-hidden">{words.setup.partName({ part })}</legend>
        {part === 'bike' && <BikePart />}
        {part === 'riders' && <RidersPart />}
        {part === 'rules' && <RulesPart />}
      </fieldset>
    </div>
  )
}
