import { Told } from '#engine/findings/finding.ts'
import type { Finding, Fix } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { type Said, say } from '#words/said.ts'
import { contest } from './contest.ts'
import { type EditedTo, editedTo, isAgainst } from './editedTo.ts'
import { type FindingsOf, type Trial, tryOut, type Verdict } from './tryOut.ts'

/**
 * Findings with those of their repairs that help: each clears its finding or makes it smaller, brings nothing else as
 * heavy, and none goes against another finding's. A repair is tried by computing the ride it gives, so what the list says
 * holds by construction; and it is tried when somebody first reads `fixes`, so planning a ride costs no more for it.
 *
 * @param findingsOf what is found of another ride
 */
export function vetted(found: readonly Finding[], ride: Ride, findingsOf: FindingsOf): Finding[] {
  const vet = vettingOf(found, ride, findingsOf)
  return found.map((finding, index) => new Untried(finding, () => vet(index)))
}

/** A finding with more said of it, its repairs still untried. */
export function withMore(finding: Finding, more: Partial<Pick<Finding, 'shownAs' | 'later'>>): Finding {
  return Object.assign(new Untried(finding, () => finding), more)
}

type Vetted = Pick<Finding, 'fixes' | 'heldBack'>
const NONE: Vetted = { fixes: [] }

/** A finding whose repairs are tried when they are first asked for. */
class Untried extends Told implements Finding {
  declare later?: boolean | undefined
  declare shownAs?: Said | undefined
  readonly #finding: Finding
  readonly #vet: () => Vetted
  #known: Vetted | undefined

  constructor(finding: Finding, vet: () => Vetted) {
    super(finding, finding.id, finding.at, finding)
    if (finding.later) this.later = true
    this.#finding = finding
    this.#vet = vet
  }

  get proposed(): readonly Fix[] {
    return this.#finding.proposed
  }

  get fixes(): readonly Fix[] {
    return this.#tried().fixes
  }

  get heldBack(): Said | undefined {
    return this.#tried().heldBack
  }

  #tried(): Vetted {
    this.#known ??= this.#vet()
    return this.#known
  }
}

/** A repair as a finding offers it, before anybody knows what it brings. */
interface Offer {
  fix: Fix
  /** Its finding's place among all. */
  finding: number
  trial: Trial
  edits: EditedTo
}

/** What is left of each finding's repairs; every one is tried once at most. */
function vettingOf(found: readonly Finding[], ride: Ride, findingsOf: FindingsOf): (finding: number) => Vetted {
  let known: readonly Offer[][] | undefined
  const offers = () => {
    known ??= offered()
    return known
  }
  function offered(): Offer[][] {
    const before = new Map(found.map((finding) => [finding.id, finding]))
    return found.map(({ fixes }, finding) =>
      fixes.map((fix) => {
        const trial = tryOut(fix, ride, before, findingsOf)
        return { fix, finding, trial, edits: editedTo(ride, trial.ride) }
      }),
    )
  }
  const verdict = ({ trial }: Offer, finding: number) => trial.verdictOn(found[finding]!)
  const contender = ({ trial, finding }: Offer) => ({ trial, finding: found[finding]!, order: finding })

  /** The repair of another finding that is offered in place of this one, since the two would undo each other. */
  function rivalOf(offer: Offer): Offer | undefined {
    for (const other of offers().flat()) {
      if (other.finding === offer.finding || !isAgainst(offer.edits, other.edits) || !verdict(other, other.finding).helps) continue
      const rival = contender(other)
      if (contest(contender(offer), rival) === rival) return other
    }
    return undefined
  }

  return (index) => {
    if (found[index]!.proposed.length === 0) return NONE
    const fixes = new Set<Fix>()
    let heldBack: Said | undefined
    for (const offer of offers()[index]!) {
      const { helps, brings } = verdict(offer, index)
      const rival = helps ? rivalOf(offer) : undefined
      if (helps && !rival) fixes.add(offer.fix)
      else if (rival && !rivalOf(rival) && verdict(rival, index).helps) fixes.add(rival.fix)
      else if (rival) heldBack ??= sayAgainst(offer.fix, rival.fix)
      else if (brings) heldBack ??= sayBrings(offer.fix, brings)
    }
    return { fixes: [...fixes], ...(fixes.size === 0 && heldBack && { heldBack }) }
  }
}

const sayBrings = ({ label }: Fix, { finding, isNew }: NonNullable<Verdict['brings']>): Said =>
  say(isNew ? 'checks.wouldBring' : 'checks.wouldWorsen', { fix: label, finding: finding.text })

const sayAgainst = ({ label }: Fix, other: Fix): Said => say('checks.goesAgainst', { fix: label, other: other.label })
