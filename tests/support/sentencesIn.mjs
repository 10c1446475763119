import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { parseSync } from 'rolldown/utils'

/*
 * Texts a person would read, found in source by its syntax: what stands between tags, and
 * strings with two words or the end of a sentence, but for names of classes, selectors,
 * imports, types, and what is only thrown or logged for programmers.
 *
 * Run by itself it prints those of a folder: node tests/support/sentencesIn.mjs src/features/setup
 */

/** @typedef {{ path: string, line: number, text: string }} Sentence */

/** Attributes that hold no text. */
const NO_TEXT =
  /^(className|d|style|href|viewBox|points|transform|id|htmlFor|type|role|key|rel|accept|sizes|stroke\w*|fill|preserveAspectRatio|patternUnits|pattern|name|autoComplete|as|dateTime|data-.*)$/

/** @param {string} text */
function isText(text) {
  const bare = text.replace(/\{\}/g, ' ').trim()
  if (/^[a-z][\w-]*(?:\.[\w-]+)+$/.test(bare) || /^[#./@a-z][\w-]*[/:#][^ ]*$/i.test(bare)) return false
  // Keys and the beginnings of keys, selectors, and markup.
  if (/^[a-z][\w]*\.$/.test(bare) || /^[\w.]*\{\}?[\w.]*$|^\{\}(?:\.[\w]+|\.\{\})+$|^[\w]+\.\{\}$/.test(text)) return false
  if (/^[.@#[<&·]|^color-mix\(|, \[|\[role=/.test(text)) return false
  if (/^(?:[a-z]+-[\w-]+ ?)+$|^[a-z][\w-]*-[\w-]* /.test(bare)) return false
  return (
    /\p{L}{2,}[’']?\p{L}*[,.:;!?]? +[“„(]?\p{L}{2}|\p{L}{3,}[.!?…]$|^\p{L}{3,} $|^ \p{L}{3,}/u.test(text.replace(/\{\}/g, '')) &&
    /\p{L}{2}/u.test(bare)
  )
}

/**
 * @param {string} path
 * @returns {Sentence[]}
 */
export function sentencesIn(path) {
  const code = readFileSync(path, 'utf8')
  const { program } = parseSync(path, code, { lang: path.endsWith('x') ? 'tsx' : 'ts' })
  /** @type {Sentence[]} */
  const found = []
  /** @param {number} start @param {string} text */
  const note = (start, text) => found.push({ path, line: code.slice(0, start).split('\n').length, text: text.replace(/\s+/g, ' ').trim() })
  /** @param {any} node */
  const visit = (node) => {
    if (!node || typeof node !== 'object') return
    if (Array.isArray(node)) {
      for (const item of node) visit(item)
      return
    }
    switch (node.type) {
      case 'ImportDeclaration':
      case 'ExportAllDeclaration':
      case 'ImportExpression':
      case 'TSLiteralType':
      case 'TSTemplateLiteralType':
      case 'ThrowStatement':
        return
      case 'ExportNamedDeclaration':
        if (node.source) return
        break
      case 'NewExpression':
        if (/(Error|RegExp|Worker|URL)$/.test(node.callee.name ?? '')) return
        break
      case 'CallExpression':
        if (node.callee.object?.name === 'console' || node.callee.property?.name === 'querySelector') return
        break
      case 'JSXAttribute':
        if (NO_TEXT.test(node.name.name ?? '')) return
        break
      case 'JSXText':
        if (/\p{L}{2}/u.test(node.value)) note(node.start, node.value)
        return
      case 'Literal':
        if (typeof node.value === 'string' && isText(node.value)) note(node.start, node.value)
        return
      case 'TemplateLiteral': {
        const text = node.quasis.map((/** @type {any} */ part) => part.value.cooked).join('{}')
        if (isText(text)) note(node.start, text)
        break
      }
    }
    for (const key of Object.keys(node)) if (key !== 'type') visit(node[key])
  }
  visit(program)
  return found
}

/**
 * Every source file at or below a path.
 *
 * @param {string} at
 * @returns {string[]}
 */
export function sourcesIn(at) {
  if (statSync(at).isFile()) return /\.tsx?$/.test(at) ? [at] : []
  return readdirSync(at).flatMap((name) => sourcesIn(join(at, name)))
}

if (process.argv[1]?.endsWith('sentencesIn.mjs')) {
  const all = process.argv.slice(2).flatMap(sourcesIn).flatMap(sentencesIn)
  for (const { path, line, text } of all) console.log(`${path}:${line}\t${text}`)
  console.log(`${all.length} texts in ${new Set(all.map(({ path }) => path)).size} files`)
}
