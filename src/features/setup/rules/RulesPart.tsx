import { constantGroups } from '#engine/constantGroups.ts'
import { CONSTANTS, type ConstantName, constantsOf } from '#engine/constants.ts'
import { Kept } from '#features/setup/parts/Kept.tsx'
import { same } from '#features/setup/parts/same.ts'
import { useRide, useRun } from '#features/setup/parts/useRide.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import type { HouseRules } from '#plan/model.ts'
import { useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { AvoidMoves } from './AvoidMoves.tsx'
import { ruleProblem, withRule } from './houseRules.ts'
import { RuleRow } from './RuleRow.tsx'
import './rules.css'

const GROUPS = constantGroups()

/** Every number the ride is judged by, with its default and its source, and the moves the room does not do. */
export function RulesPart() {
  const store = useAppStore()
  const houseRules = useRide((ride) => ride.houseRules)
  const avoidMoves = useRide((ride) => ride.avoidMoves)
  const run = useRun()
  const put = (next: HouseRules | undefined) => run(() => patchRide({ houseRules: next }))
  const values = constantsOf({ houseRules })
  const set = (name: ConstantName) => (value: number) => {
    const problem = ruleProblem(name, value, (other) => values[other])
    if (problem === null && value !== values[name]) put(withRule(houseRules, name, value))
    return problem
  }
  const changed = Object.keys(houseRules ?? {}).length
  return (
    <>
      <div className="setup-columns">
        <AvoidMoves
          moves={avoidMoves ?? []}
          onChange={(moves) => run(() => patchRide({ avoidMoves: moves.length === 0 ? undefined : [...moves] }))}
        />
        <Kept
          kind="rules"
          title="house rules"
          empty="None yet. Keep the rules of each room you teach in, and use them for its rides."
          say={({ houseRules: kept, avoidMoves: avoided }) => sayRules(Object.keys(kept).length, avoided.length)}
          isInUse={({ houseRules: kept, avoidMoves: avoided }) => same(kept, houseRules ?? {}) && same(avoided, avoidMoves ?? [])}
          onUse={({ houseRules: kept, avoidMoves: avoided }) =>
            run(() =>
              patchRide({
                houseRules: Object.keys(kept).length === 0 ? undefined : kept,
                avoidMoves: avoided.length === 0 ? undefined : avoided,
              }),
            )
          }
          make={(name) => ({
            kind: 'rules',
            id: store.getState().newId(),
            name,
            houseRules: { ...houseRules },
            avoidMoves: [...(avoidMoves ?? [])],
          })}
          keepLabel="keep these rules"
        />
      </div>
      <div className="rules-head">
        <p>
          {changed === 0
            ? 'Every number is as it comes.'
            : `${changed === 1 ? 'One number is' : `${changed} numbers are`} this room’s own.`}{' '}
          <span className="setup-quiet">Under each stand its default and where it is from. They go with the ride, in files and links.</span>
        </p>
        {changed > 0 && (
          <div className="setup-buttons">
            <Button onClick={() => put(undefined)}>reset all numbers</Button>
          </div>
        )}
      </div>
      <div className="rules-groups">
        {GROUPS.map(({ title, names }) => (
          <section key={title} className="setup-part" aria-label={title}>
            <h2>{title}</h2>
            <div>
              {names.map((name) => (
                <RuleRow key={name} spec={CONSTANTS[name]} value={values[name]} onCommit={set(name)} />
              ))}
            </div>
          </section>
        ))}
      </div>
    </>
  )
}

const sayRules = (numbers: number, moves: number): string =>
  `${numbers === 0 ? 'no numbers' : numbers === 1 ? '1 number' : `${numbers} numbers`} of its own, ${moves === 0 ? 'no moves' : moves === 1 ? '1 move' : `${moves} moves`} to avoid`
