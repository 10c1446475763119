import { posix } from 'node:path'
import { type ESTree, parseSync } from 'vite'
import { nodesOf } from './nodesOf.ts'
import { readRepositoryFile } from './repositoryFiles.ts'

/** Files by their paths from the root of the repository. */
export type Files = ReadonlyMap<string, string>

interface Module {
  /** Names it exports, types too, with the line each stands on; `default` for the one without a name. */
  exports: Map<string, number>
  /** Modules whose every export it exports again. */
  stars: string[]
  /** What it takes by name from another module. */
  taken: { from: string; name: string }[]
  /** Modules it takes as a whole, at run time or under one name: any name that stands in it may be one of theirs. */
  whole: string[]
  /** Modules it needs without taking a name: style sheets, workers. */
  needed: string[]
  /** Every name that stands in it. */
  names: ReadonlySet<string>
}

/**
 * The exports that no other file of the program uses, as "path:line name", and the files that no entry leads to. What only
 * an unreachable file uses is unused as well. An import counts as a use; that it is used in turn is for the compiler to see.
 *
 * @param entries files that are started by themselves
 */
export function unusedExports(files: Files, entries: readonly string[]): string[] {
  const modules = new Map([...files].map(([path, text]) => [path, readModule(path, text)]))
  const reached = reachable(modules, entries)
  const used = new Set<string>()
  for (const path of reached) for (const key of usesOf(modules, path)) used.add(key)
  return [...modules].flatMap(([path, { exports }]) => {
    if (!reached.has(path)) return [`${path} is reached from nowhere`]
    return [...exports].flatMap(([name, line]) => (used.has(keyOf(path, name)) ? [] : [`${path}:${line} ${name}`]))
  })
}

const keyOf = (path: string, name: string): string => `${path}#${name}`

function reachable(modules: ReadonlyMap<string, Module>, entries: readonly string[]): Set<string> {
  const reached = new Set<string>()
  const open = [...entries]
  for (let path = open.pop(); path !== undefined; path = open.pop()) {
    const module = modules.get(path)
    if (!module || reached.has(path)) continue
    reached.add(path)
    open.push(...module.taken.map(({ from }) => from), ...module.stars, ...module.whole, ...module.needed)
  }
  return reached
}

/** What a file uses of other files. */
function usesOf(modules: ReadonlyMap<string, Module>, path: string): string[] {
  const { taken, whole, names } = modules.get(path)!
  const byName = taken.flatMap(({ from, name }) => placesOf(modules, from, name))
  const mentioned = whole.flatMap((from) => [...exportedNames(modules, from)].filter((name) => names.has(name) || name === 'default'))
  return [...byName, ...whole.flatMap((from) => mentioned.flatMap((name) => placesOf(modules, from, name)))].filter(
    (key) => !key.startsWith(`${path}#`),
  )
}

/** Where a name that is taken from a module is exported: there, or where that module has it from with all the rest. */
function placesOf(modules: ReadonlyMap<string, Module>, path: string, name: string): string[] {
  const module = modules.get(path)
  if (!module) return []
  return module.exports.has(name) ? [keyOf(path, name)] : module.stars.flatMap((from) => placesOf(modules, from, name))
}

function exportedNames(modules: ReadonlyMap<string, Module>, path: string): string[] {
  const module = modules.get(path)
  return module ? [...module.exports.keys(), ...module.stars.flatMap((from) => exportedNames(modules, from))] : []
}

function readModule(path: string, text: string): Module {
  const { module, program, errors } = parseSync(path, text)
  if (errors.length > 0) throw new Error(`${path} cannot be parsed: ${errors[0]!.message}`)
  const read: Module = { exports: new Map(), stars: [], taken: [], whole: [], needed: [], names: new Set() }
  const lineAt = (at: number) => text.slice(0, at).split('\n').length
  const within = (address: string, take: (from: string) => void) => {
    const from = resolved(path, address)
    if (from !== null) take(from)
  }

  for (const { moduleRequest, entries } of module.staticImports) {
    within(moduleRequest.value, (from) => {
      read.needed.push(from)
      for (const { importName } of entries) {
        if (importName.kind === 'NamespaceObject') read.whole.push(from)
        else read.taken.push({ from, name: importName.name ?? 'default' })
      }
    })
  }
  for (const { entries } of module.staticExports) {
    for (const { moduleRequest, importName, exportName, start } of entries) {
      if (exportName.kind !== 'None') read.exports.set(exportName.name ?? 'default', lineAt(start))
      if (!moduleRequest) continue
      within(moduleRequest.value, (from) => {
        if (importName.kind === 'AllButDefault') read.stars.push(from)
        else if (importName.kind === 'All') read.whole.push(from)
        else read.taken.push({ from, name: importName.name ?? 'default' })
      })
    }
  }
  const names = new Set<string>()
  for (const node of nodesOf(program)) {
    if (node.type === 'Identifier') names.add(node.name)
    else if (node.type === 'ImportExpression' && isText(node.source)) within(node.source.value, (from) => read.whole.push(from))
    else if (node.type === 'TSImportType') {
      const { source, qualifier } = node
      within(source.value, (from) => (qualifier ? read.taken.push({ from, name: firstOf(qualifier) }) : read.whole.push(from)))
    } else if (node.type === 'NewExpression' && node.callee.type === 'Identifier' && node.callee.name === 'URL') {
      const [address] = node.arguments
      if (address && isText(address)) within(address.value, (from) => read.needed.push(from))
    }
  }
  return { ...read, names }
}

const isText = (node: ESTree.Node): node is ESTree.StringLiteral => node.type === 'Literal' && typeof node.value === 'string'

/** `A` of `import('./b.ts').A.B`. */
function firstOf(name: ESTree.TSImportTypeQualifier): string {
  return name.type === 'Identifier' ? name.name : firstOf(name.left)
}

const { imports } = JSON.parse(readRepositoryFile('package.json')) as { imports: Record<string, string> }

/** The path an address stands for; null for a package. */
export function resolved(path: string, address: string): string | null {
  if (address.startsWith('.')) return posix.join(posix.dirname(path), address)
  const [from, to] = Object.entries(imports).find(([key]) => address.startsWith(key.slice(0, -1))) ?? []
  return from && to ? posix.normalize(to.slice(0, -1) + address.slice(from.length - 1)) : null
}
