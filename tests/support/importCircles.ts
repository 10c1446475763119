import { parseSync } from 'vite'
import { nodesOf } from './nodesOf.ts'
import { type Files, resolved } from './unusedExports.ts'

/**
 * Files that lead back to themselves by imports of any kind, types too: each circle as the paths in it, sorted. Circles that
 * share a file are one (Tarjan’s strongly connected components).
 */
export function importCircles(files: Files): string[][] {
  const imports = new Map([...files].map(([path, text]) => [path, importsOf(path, text).filter((to) => files.has(to))]))
  const order = new Map<string, number>()
  const lowest = new Map<string, number>()
  const open: string[] = []
  const circles: string[][] = []
  const visit = (path: string): void => {
    order.set(path, order.size)
    lowest.set(path, order.get(path)!)
    open.push(path)
    for (const to of imports.get(path)!) {
      if (!order.has(to)) visit(to)
      if (open.includes(to)) lowest.set(path, Math.min(lowest.get(path)!, lowest.get(to)!))
    }
    if (lowest.get(path) !== order.get(path)) return
    const circle = open.splice(open.indexOf(path))
    if (circle.length > 1) circles.push(circle.sort())
  }
  for (const path of imports.keys()) if (!order.has(path)) visit(path)
  return circles
}

function importsOf(path: string, text: string): string[] {
  const { module, program } = parseSync(path, text)
  const addresses = [
    ...module.staticImports.map(({ moduleRequest }) => moduleRequest.value),
    ...module.staticExports.flatMap(({ entries }) => entries.flatMap(({ moduleRequest }) => moduleRequest?.value ?? [])),
  ]
  for (const node of nodesOf(program)) {
    if (node.type === 'TSImportType') addresses.push(node.source.value)
    else if (node.type === 'ImportExpression' && node.source.type === 'Literal') addresses.push(String(node.source.value))
  }
  return addresses.flatMap((address) => resolved(path, address) ?? [])
}
