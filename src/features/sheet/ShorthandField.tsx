import { Disclosure } from '#ui/Disclosure.tsx'
import { Field } from '#ui/Field.tsx'
import { plural } from '#units/plural.ts'
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
    <Disclosure
      className="sheet-more"
      summary={terms.length === 0 ? 'own shorthand' : `own shorthand, ${plural(terms.length, 'entry', 'entries')}`}
    >
      <Field
        label="short forms, one a line"
        rows={4}
        value={writeShorthand(terms)}
        placeholder="TB = travel-back"
        hint="Put in place of the words wherever they are printed, and explained at the foot. Kept on this machine."
        onCommit={commit}
      />
    </Disclosure>
  )
}
