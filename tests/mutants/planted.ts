import type { Mutant } from './mutantsOf.ts'

/** The name under which planted code asks whether a mistake is made; `switch.ts` answers. */
export const SWITCH = 'isMistaken'

/** A mistake with the number it is known by. */
export interface Planted extends Mutant {
  id: number
}

/** A file with mistakes in it that do not overlap, each of them asleep until its number is switched on. */
export function planted(text: string, mutants: readonly Planted[]): string {
  return [...mutants]
    .sort((a, b) => b.from - a.from)
    .reduce((code, { id, from, to, was, becomes, kind, isFirst }) => {
      const either = `(${SWITCH}(${id}) ? (${becomes}) : (${was}))`
      // In braces it takes no `else` that is another's; `void` keeps a row from being read as the end of the one before.
      const both = kind === 'statement' ? `{if (!${SWITCH}(${id})) {${was}}}` : isFirst ? `void ${either}` : either
      return code.slice(0, from) + both + code.slice(to)
    }, text)
}

/** Whether two mistakes of one file cannot be made side by side. */
export const overlap = (a: Mutant, b: Mutant): boolean => a.path === b.path && a.from < b.to && b.from < a.to
