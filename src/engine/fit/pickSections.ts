import type { Constants } from '#engine/constants.ts'
import type { Seconds } from '#units/units.ts'
import { type Role, type SectionShape, shapeDistance, shareOf } from './shapeOf.ts'

/** A choice of sections by their index in the parent, in order; an index may come twice. */
interface Selection {
  sections: number[]
  score: number
}

interface Picking {
  shapes: readonly SectionShape[]
  roles: readonly Role[]
  /** Sections that must stay. */
  kept: ReadonlySet<number>
  slot: Seconds
  rules: Pick<Constants, 'warmUpShare' | 'coolDownShare' | 'fitUnder'>
}

/** Sections that are chosen from by trying every subset; more than that and the rest stay. */
const MOST_CHOSEN = 14
/** How much of a length songs can give way by, ending at another phrase. */
const GIVE = 0.3

/**
 * Selections for a class of another length, the best first: the finish, a warm-up and a
 * cool-down of the least share stay, waves go (or come again) whole, and the shape of what is
 * left is as near the parent's as can be. Each can still be brought to the slot by phrase ends.
 */
export function pickSections(picking: Picking, most: number): Selection[] {
  const base = repeated(picking)
  const chosen = base.flatMap((index, place) => (picking.kept.has(index) && isFirst(base, place) ? [] : [place])).slice(0, MOST_CHOSEN)
  const best: Selection[] = []
  for (let mask = 0; mask < 1 << chosen.length; mask++) {
    const gone = new Set(chosen.filter((_, bit) => mask & (1 << bit)))
    const sections = base.filter((_, place) => !gone.has(place))
    const score = scoreOf(sections, picking)
    if (score === null) continue
    insert(best, { sections, score }, most)
  }
  return best
}

const isFirst = (base: readonly number[], place: number): boolean => base.indexOf(base[place]!) === place

/** The parent's sections, its waves and (for their share) its ends repeated until they can fill the slot. */
function repeated({ shapes, roles, slot }: Picking): number[] {
  const of = (role: Role): number[] => roles.flatMap((one, i) => (one === role ? [i] : []))
  const seconds = (list: readonly number[]): Seconds => list.reduce((sum, i) => sum + shapes[i]!.seconds, 0)
  const all = shapes.map((_, i) => i)
  const times = seconds(all) > 0 ? Math.min(4, Math.ceil(slot / seconds(all))) : 1
  if (times <= 1) return all
  const again = (role: Role): number[] => Array.from({ length: times }, () => of(role)).flat()
  return [...again('warmUp'), ...again('middle'), ...of('finish'), ...again('coolDown')]
}

/** Lower is better; null where the selection cannot become the class asked for. */
function scoreOf(sections: readonly number[], { shapes, roles, slot, rules }: Picking): number | null {
  const own = sections.map((i) => shapes[i]!)
  const ownRoles = sections.map((i) => roles[i]!)
  const total = own.reduce((sum, { seconds }) => sum + seconds, 0)
  if (total < slot - rules.fitUnder || total * (1 - GIVE) > slot) return null
  const warm = shareOf(own, ownRoles, 'warmUp')
  const cool = shareOf(own, ownRoles, 'coolDown')
  if (warm < rules.warmUpShare / 100 || cool < rules.coolDownShare / 100) return null
  const ends = Math.abs(warm - shareOf(shapes, roles, 'warmUp')) + Math.abs(cool - shareOf(shapes, roles, 'coolDown'))
  return shapeDistance(shapes, own) + 5 * ends + (4 * Math.max(0, total - slot)) / slot + 0.2 * repeats(sections)
}

const repeats = (sections: readonly number[]): number => sections.length - new Set(sections).size

function insert(best: Selection[], next: Selection, most: number): void {
  const at = best.findIndex(({ score }) => next.score < score)
  if (at < 0 && best.length >= most) return
  best.splice(at < 0 ? best.length : at, 0, next)
  if (best.length > most) best.pop()
}
