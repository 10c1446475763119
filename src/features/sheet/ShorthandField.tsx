import { Disclosure } from '#ui/Disclosure.tsx'
import { Field } from '#ui/Field.tsx'
import { words } from '#words/words.ts'
import { readShorthand, writeShorthand } from './contents/shorthand.ts'
import type { Shorthand } from './useShorthand.ts'

/** The leader's own dictionary, one entry a line. */
export function ShorthandField({ terms, onChange }: Shorthand) {
  const commit = (text: string) => {
    const read = readShorthand(text)
    if (!read.ok) return read.problem
    onChange(read.terms)
    return null
  }
  return (
    <Disclosure className="sheet-more" summary={words.sheet.abbreviations({ count: terms.length })}>
      <Field
        label={words.sheet.abbreviationsField}
        rows={4}
        value={writeShorthand(terms)}
        placeholder={words.sheet.abbreviationsExample}
        hint={words.sheet.abbreviationsHint}
        onCommit={commit}
      />
    </Disclosure>
  )
}
