import { type ESTree, parseSync } from 'vite'
import { chanceOf } from '#tests/fuzz/chance.ts'

/** One small mistake put into the source: the code between two places is another. */
export interface Mutant {
  path: string
  line: number
  from: number
  to: number
  was: string
  /** What stands there instead; nothing where a statement is left out. */
  becomes: string
  kind: 'expression' | 'statement'
  /** An expression that a statement begins with. */
  isFirst?: true
}

/** Operators and what each is mistaken for. */
const OPERATORS: Record<string, readonly string[]> = {
  '<': ['<=', '>'],
  '<=': ['<', '>='],
  '>': ['>=', '<'],
  '>=': ['>', '<='],
  '===': ['!=='],
  '!==': ['==='],
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '%': ['*'],
  '**': ['*'],
  '&&': ['||'],
  '||': ['&&'],
  '+=': ['-='],
  '-=': ['+='],
  '*=': ['/='],
  '/=': ['*='],
}

/** Methods and what each is mistaken for. */
const METHODS: Record<string, readonly string[]> = {
  min: ['max'],
  max: ['min'],
  floor: ['ceil', 'round'],
  ceil: ['floor', 'round'],
  round: ['floor', 'ceil'],
  some: ['every'],
  every: ['some'],
  find: ['findLast'],
  findLast: ['find'],
  findIndex: ['findLastIndex'],
  findLastIndex: ['findIndex'],
}

/** Methods without which a list goes on as it was. */
const DROPPED = new Set(['filter', 'sort', 'toSorted', 'reverse', 'toReversed', 'trim'])

/** A word that stands for a value of a closed list, as `kind: 'keep'` has it; no sentence a person reads. */
const A_WORD = /^[a-z][a-zA-Z]*$/

/** Every mistake that can be made in a file, in the order of the code. Types, imports, comments and what is read by people stay. */
export function mutantsOf(path: string, text: string): Mutant[] {
  const { program, errors } = parseSync(path, text)
  if (errors.length > 0) throw new Error(`${path} cannot be parsed: ${errors[0]!.message}`)
  const mutants: Mutant[] = []
  const words = wordsOf(program)
  const lineAt = lineCounter(text)
  const put = (node: ESTree.Span, becomes: string, kind: Mutant['kind'] = 'expression') => {
    const [from, to] = [node.start, node.end]
    const isFirst = kind === 'expression' && firsts.has(from)
    mutants.push({ path, line: lineAt(from), from, to, was: text.slice(from, to), becomes, kind, ...(isFirst && { isFirst }) })
  }
  const source = ({ start, end }: ESTree.Span) => text.slice(start, end)
  const firsts = new Set<number>()

  for (const node of codeIn(program)) {
    if (node.type === 'ExpressionStatement') firsts.add(node.start)
    switch (node.type) {
      case 'BinaryExpression':
      case 'LogicalExpression': {
        const { left, right } = node
        if (node.operator === '??') put(node, source(left))
        else if (!isWords(left) && !isWords(right)) {
          for (const other of OPERATORS[node.operator] ?? []) put(node, `${source(left)} ${other} ${source(right)}`)
        }
        break
      }
      case 'AssignmentExpression':
        for (const other of OPERATORS[node.operator] ?? []) put(node, `${source(node.left)} ${other} ${source(node.right)}`)
        break
      case 'UpdateExpression':
        put(
          node,
          source(node).replace(/\+\+|--/, (was) => (was === '++' ? '--' : '++')),
        )
        break
      case 'UnaryExpression':
        if (node.operator === '!' || node.operator === '-') put(node, source(node.argument))
        break
      case 'Literal':
        for (const other of otherLiterals(node, words)) put(node, other)
        break
      case 'ConditionalExpression':
        put(node.test, `!(${source(node.test)})`)
        break
      case 'IfStatement':
        put(node.test, `!(${source(node.test)})`)
        if (node.alternate === null && leaves(node.consequent)) put(node, '', 'statement')
        break
      case 'WhileStatement':
        put(node.test, `!(${source(node.test)})`)
        break
      case 'ExpressionStatement':
        if (node.expression.type === 'CallExpression' || node.expression.type === 'AssignmentExpression') put(node, '', 'statement')
        break
      case 'CallExpression':
        for (const other of otherCalls(node, source)) put(node, other)
        break
    }
  }
  return mutants
}

/** Nodes of the program that do something: no types, no imports, no names of fields, and not the words of a directive. */
function* codeIn(node: ESTree.Node): Generator<ESTree.Node, void> {
  if (node.type.startsWith('TS')) {
    if ('expression' in node && isNode(node.expression)) yield* codeIn(node.expression)
    return
  }
  if (node.type === 'ImportDeclaration' || node.type === 'ExportAllDeclaration') return
  if (node.type === 'ExpressionStatement' && node.directive != null) return
  yield node
  for (const [key, value] of Object.entries(node)) {
    if (isName(node, key)) continue
    for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) yield* codeIn(child)
  }
}

/** Whether the child under a key is a name that has to stay as it is. */
function isName(node: ESTree.Node, key: string): boolean {
  if (node.type === 'Property' || node.type === 'PropertyDefinition') return key === 'key' && !node.computed
  if (node.type === 'ImportExpression' || node.type === 'ExportNamedDeclaration') return key === 'source'
  return node.type === 'AssignmentExpression' && key === 'left'
}

const isNode = (value: unknown): value is ESTree.Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string'

/** The words a file writes for values of closed lists. */
function wordsOf(program: ESTree.Program): string[] {
  const words = [...codeIn(program)].flatMap((node) => (node.type === 'Literal' && typeof node.value === 'string' ? [node.value] : []))
  return [...new Set(words.filter((word) => A_WORD.test(word)))]
}

/** Values a literal is mistaken for: the other truth, one more and one less, another word of the file, chosen by the place. */
function otherLiterals({ value, start }: ESTree.Node & { type: 'Literal' }, words: readonly string[]): string[] {
  if (typeof value === 'boolean') return [String(!value)]
  if (typeof value === 'number') return Number.isInteger(value) ? [`${value + 1}`, `${value - 1}`] : [`${value * 1.25}`]
  if (typeof value !== 'string' || !A_WORD.test(value)) return []
  const others = words.filter((word) => word !== value)
  return others.length === 0 ? [`'another'`] : [`'${chanceOf(start).pick(others)}'`]
}

/** Text, which + joins and − does not. */
function isWords(node: ESTree.Node): boolean {
  if (node.type === 'BinaryExpression') return isWords(node.left) || isWords(node.right)
  return node.type === 'TemplateLiteral' || (node.type === 'Literal' && typeof node.value === 'string' && !A_WORD.test(node.value))
}

/** A statement that ends a function or a turn of a loop. */
function leaves(node: ESTree.Statement): boolean {
  if (node.type === 'BlockStatement') return node.body.length === 1 && leaves(node.body[0]!)
  return node.type === 'ReturnStatement' || node.type === 'ContinueStatement' || node.type === 'ThrowStatement'
}

/** What a call of a method is mistaken for: another method, none at all, another end of a slice. A link of an optional chain stays. */
function otherCalls({ callee, arguments: given, start, end }: ESTree.CallExpression, source: (of: ESTree.Span) => string): string[] {
  if (callee.type !== 'MemberExpression' || callee.computed || callee.property.type !== 'Identifier') return []
  const { object, property } = callee
  if (source(callee).includes('?.')) return []
  const { name } = property
  const renamed = Object.hasOwn(METHODS, name)
    ? METHODS[name]!.map((other) => `${source(object)}.${other}${source({ start: property.end, end })}`)
    : []
  const dropped = DROPPED.has(name) ? [source(object)] : []
  const bounds = name !== 'slice' ? [] : given.filter(({ type }) => type !== 'Literal')
  const moved = bounds.map((bound) => `${source({ start, end: bound.start })}(${source(bound)}) + 1${source({ start: bound.end, end })}`)
  return [...renamed, ...dropped, ...moved]
}

function lineCounter(text: string): (at: number) => number {
  const starts = [...text.matchAll(/\n/g)].map(({ index }) => index)
  return (at) => starts.filter((start) => start < at).length + 1
}
