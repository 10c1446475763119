import { readdirSync, readFileSync } from 'node:fs'
import { join, relative, sep } from 'node:path'
import { fileURLToPath } from 'node:url'

export const ROOT = fileURLToPath(new URL('../..', import.meta.url))

/** Names at any depth that are made by the tools and kept out of the repository; `.git` itself, and what `.gitignore` lists. */
const IGNORED = ['.git', ...ignoredNames()]

/** What stands at the top of the repository. */
export function topLevelNames(): string[] {
  return readdirSync(ROOT).filter((name) => !isIgnored(name))
}

/** Every file of the repository below a folder, as paths from the root with forward slashes. Needs no git. */
export function repositoryFiles(folder = '.'): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true })
    .filter((entry) => !isIgnored(entry.name))
    .flatMap((entry) => {
      const path = relative('.', join(folder, entry.name)).replaceAll(sep, '/')
      return entry.isDirectory() ? repositoryFiles(path) : [path]
    })
}

export function readRepositoryFile(path: string): string {
  return readFileSync(join(ROOT, path), 'utf8')
}

function isIgnored(name: string): boolean {
  return IGNORED.some((ignored) => (ignored.startsWith('*') ? name.endsWith(ignored.slice(1)) : name === ignored))
}

function ignoredNames(): string[] {
  const lines = readFileSync(join(ROOT, '.gitignore'), 'utf8').split('\n')
  return lines.filter(Boolean).map((line) => line.replace(/\/$/, ''))
}
