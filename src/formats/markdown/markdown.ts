/** Text in which nothing is taken for a mark: every character that can start one is escaped. */
export const escapeMarkdown = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .replace(/[\\`*_{}[\]<>#|~&]/g, '\\$&')
    // At the start of a line these begin a list or a rule.
    .replace(/^(\s*)([-+]|\d+[.)])(?=\s)/, (_, space: string, mark: string) => `${space}${mark.slice(0, -1)}\\${mark.at(-1)}`)

/** A table with a head; columns in `right` are aligned to the right. Source: GitHub Flavored Markdown, tables (extension). */
export function markdownTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right: ReadonlySet<number> = new Set(),
): string {
  const line = (cells: readonly string[]) => `| ${cells.map(escapeMarkdown).join(' | ')} |`
  const rule = `| ${head.map((_, column) => (right.has(column) ? '--:' : '---')).join(' | ')} |`
  return [line(head), rule, ...rows.map(line)].join('\n')
}
