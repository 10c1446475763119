import { escapeMarkdown, markdownTable } from '#formats/markdown/markdown.ts'
import type { Listing } from './listing.ts'

/** A listing as Markdown: a heading for the ride and for every section, and a table of each section's changes. */
export function writeMarkdown({ title, facts, head, numbers, sections, notes }: Listing): string {
  const parts = sections.flatMap((section) => [
    `## ${escapeMarkdown(section.title)}`,
    escapeMarkdown(section.facts.join(', ')),
    ...(section.rows.length > 0 ? [markdownTable(head, section.rows, numbers)] : []),
  ])
  return `${[`# ${escapeMarkdown(title)}`, escapeMarkdown(facts.join(', ')), ...parts, ...notes.map(escapeMarkdown)].join('\n\n')}\n`
}
