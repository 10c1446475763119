import { constantGroups } from '#engine/constantGroups.ts'
import { CONSTANTS, type ConstantName, constantsOf } from '#engine/constants.ts'
import { Kept } from '#features/setup/parts/Kept.tsx'
import { same } from '#features/setup/parts/same.ts'
import { useRide, useRun } from '#features/setup/parts/useRide.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import type { HouseRules } from '#plan/model.ts'
import { useAppStore } from '#store/useApp.ts'
import { useSought } from '#store/useSought.ts'
import { Button } from '#ui/Button.tsx'
import { showFound } from '#ui/showFound.ts'
import { words } from '#words/words.ts'
import { AvoidMoves } from './AvoidMoves.tsx'
import { ruleProblem, withRule } from './houseRules.ts'
import { RuleRow } from './RuleRow.tsx'
import './rules.css'

const GROUPS = constantGroups()

/** Every number the ride is judged by, with its default and its source, and the moves the studio does not do. */
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
  useSought('rule', ({ name }) => showFound(document.querySelector(`[data-rule="${CSS.escape(name)}"] input`)))
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
          title={words.rules.keptTitle}
          empty={words.rules.keptEmpty}
          say={({ houseRules: kept, avoidMoves: avoided }) =>
            words.rules.kept({ numbers: Object.keys(kept).length, moves: avoided.length })
          }
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
          keepLabel={words.rules.keepThem}
        />
      </div>
      <div className="rules-head">
        <p>
          {changed === 0 ? words.rules.allDefault : words.rules.changed({ count: changed })}{' '}
          <span className="setup-quiet">{words.rules.where}</span>
        </p>
        {changed > 0 && (
          <div className="setup-buttons">
            <Button onClick={() => put(undefined)}>{words.rules.resetAll}</Button>
          </div>
        )}
      </div>
      <div className="rules-groups">
        {GROUPS.map(({ group, names }) => (
          <section key={group} className="setup-part" aria-label={words.rules.group({ group })}>
            <h2>{words.rules.group({ group })}</h2>
            <div>
              {names.map((name) => (
                <RuleRow key={name} name={name} spec={CONSTANTS[name]} value={values[name]} onCommit={set(name)} />
              ))}
            </div>
          </section>
        ))}
      </div>
    </>
  )
}
