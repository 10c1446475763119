import type { Seconds } from '#units/units.ts'
import { endsOf, type Role, type SectionShape, shapeDistance } from './shapeOf.ts'

/** A choice of sections by their index in what can be played, in order; an index may come twice. */
interface Selection {
  sections: number[]
  score: number
}

interface Picking {
  /** The parent's own sections, and behind them its easy start and end as sections of their own, where it has them. */
  shapes: readonly SectionShape[]
  roles: readonly Role[]
  start?: number
  end?: number
  /** Sections that must stay. */
  kept: ReadonlySet<number>
  slot: Seconds
  /** The least warm-up and cool-down. */
  least: { warmUp: Seconds; coolDown: Seconds }
  fitUnder: Seconds
}

/** How many selections are followed at each step: on classes of up to fourteen songs as good as trying all. */
const WIDTH = 40
/** How much of a length songs can give way by, ending at another phrase. */
const GIVE = 0.4

/**
 * Selections for a class of another length, the best first: the finish and a warm-up and cool-down
 * of the least length stay, waves go (or come again) whole, and the shape of what is left is as
 * near the parent's as can be. Each can still be brought to the slot by phrase ends. Sections are
 * taken away one at a time, and at each step the best are followed further. Cost: sections² × width.
 */
export function pickSections(picking: Picking, most: number): Selection[] {
  const base = repeated(picking)
  const own = picking.shapes.slice(0, picking.roles.length)
  const best: Selection[] = []
  let step: Selection[] = [{ sections: base, score: 0 }]
  while (step.length > 0) {
    for (const { sections } of step) {
      const score = scoreOf(sections, picking, own)
      if (score !== null) insert(best, { sections, score }, most)
    }
    step = shorter(step, picking, own)
  }
  return best
}

/** Every way to take one more section away that can still fill the slot, the best of them. */
function shorter(step: readonly Selection[], picking: Picking, own: readonly SectionShape[]): Selection[] {
  const next: Selection[] = []
  const seen = new Set<string>()
  for (const { sections } of step) {
    for (let place = 0; place < sections.length; place++) {
      const index = sections[place]!
      if (picking.kept.has(index) && sections.filter((other) => other === index).length === 1) continue
      // Of copies in a row it does not matter which one goes.
      if (sections[place - 1] === index) continue
      const left = sections.toSpliced(place, 1)
      const key = left.join(' ')
      if (seen.has(key)) continue
      seen.add(key)
      if (lengthOf(left, picking) < picking.slot - picking.fitUnder) continue
      insert(next, { sections: left, score: unlikeness(left, picking, own) }, WIDTH)
    }
  }
  return next
}

/** The parent's sections, its waves and (for their share) its ends repeated until they can fill the slot. */
function repeated({ shapes, roles, start, end, slot }: Picking): number[] {
  const of = (role: Role): number[] => roles.flatMap((one, i) => (one === role ? [i] : []))
  const all = roles.map((_, i) => i)
  const finish = roles.includes('finish') ? roles.indexOf('finish') : roles.length
  const total = all.reduce((sum, i) => sum + shapes[i]!.seconds, 0)
  const times = total > 0 ? Math.min(4, Math.ceil(slot / total)) : 1
  if (times <= 1) return all
  const again = (role: Role): number[] => Array.from({ length: times }, () => of(role)).flat()
  const more = (index: number | undefined): number[] => (index === undefined ? [] : Array.from({ length: times - 1 }, () => index))
  // What follows the finish follows it once, and the song that ends the class ends it still.
  const waves = of('middle').filter((i) => i < finish)
  const after = of('middle').filter((i) => i >= finish)
  const middles = Array.from({ length: times }, () => waves).flat()
  return [...more(start), ...again('warmUp'), ...middles, ...of('finish'), ...after, ...again('coolDown'), ...more(end)]
}

const lengthOf = (sections: readonly number[], { shapes }: Picking): Seconds => sections.reduce((sum, i) => sum + shapes[i]!.seconds, 0)

/** Lower is better; null where the selection cannot become the class asked for. */
function scoreOf(sections: readonly number[], picking: Picking, own: readonly SectionShape[]): number | null {
  const { shapes, slot, least, fitUnder } = picking
  const total = lengthOf(sections, picking)
  if (total < slot - fitUnder || total * (1 - GIVE) > slot) return null
  const { warmUp, coolDown } = endsOf(sections.map((i) => shapes[i]!))
  if (warmUp < least.warmUp || coolDown < least.coolDown) return null
  return unlikeness(sections, picking, own) + (4 * Math.max(0, total - slot)) / slot
}

/** How far a selection lies from the parent in shape and in the share of its ends, and how much of it comes again. */
function unlikeness(sections: readonly number[], { shapes, roles }: Picking, own: readonly SectionShape[]): number {
  const chosen = sections.map((i) => shapes[i]!)
  const [is, was] = [sharesOf(chosen), sharesOf(own)]
  const ends = Math.abs(is.warmUp - was.warmUp) + Math.abs(is.coolDown - was.coolDown)
  const repeats = sections.length - new Set(sections.filter((i) => i < roles.length)).size
  return shapeDistance(own, chosen) + 5 * ends + 0.2 * repeats
}

function sharesOf(shapes: readonly SectionShape[]): { warmUp: number; coolDown: number } {
  const total = shapes.reduce((sum, { seconds }) => sum + seconds, 0)
  const { warmUp, coolDown } = endsOf(shapes)
  return total > 0 ? { warmUp: warmUp / total, coolDown: coolDown / total } : { warmUp: 0, coolDown: 0 }
}

function insert(best: Selection[], next: Selection, most: number): void {
  const at = best.findIndex(({ score }) => next.score < score)
  if (at < 0 && best.length >= most) return
  best.splice(at < 0 ? best.length : at, 0, next)
  if (best.length > most) best.pop()
}
