import type { ESTree } from 'vite'

/** Every node of a syntax tree, parents before their children. */
export function* nodesOf(node: ESTree.Node): Generator<ESTree.Node, void> {
  yield node
  for (const value of Object.values(node)) {
    for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) yield* nodesOf(child)
  }
}

const isNode = (value: unknown): value is ESTree.Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string'
