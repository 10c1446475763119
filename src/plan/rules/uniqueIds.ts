import { eachBlock, type Fault, type Path, type Rule } from './rule.ts'

/**
 * Sections, items (blocks and sets alike), cues, leaders and riders are found by their
 * id, so no two of a kind may share one. Songs may: the same song can be ridden twice.
 */
export const uniqueIds: Rule = (ride) => {
  const items = ride.sections.flatMap((section, s) => section.blocks.map((item, b) => at(item.id, 'sections', s, 'blocks', b)))
  const parts = [...eachBlock(ride)].filter(({ path }) => path.includes('parts')).map(({ block, path }) => at(block.id, ...path))
  const cues = [...eachBlock(ride)].flatMap(({ block, path }) => block.cues.map((cue, c) => at(cue.id, ...path, 'cues', c)))
  return [
    ...repeats(ride.sections.map((section, s) => at(section.id, 'sections', s))),
    ...repeats([...items, ...parts]),
    ...repeats(cues),
    ...repeats(ride.leaders.map((leader, l) => at(leader.id, 'leaders', l))),
    ...repeats((ride.riders ?? []).map((rider, r) => at(rider.id, 'riders', r))),
  ]
}

const at = (id: string, ...path: Path) => ({ id, path: [...path, 'id'] })

function repeats(named: { id: string; path: Path }[]): Fault[] {
  const seen = new Set<string>()
  return named.flatMap(({ id, path }) => {
    const repeated = seen.has(id)
    seen.add(id)
    return repeated ? [{ path, wrong: { problem: 'repeatedId', id } }] : []
  })
}
