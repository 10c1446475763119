import { latestOf, toFront } from './columns.ts'
import { given, type Shape } from './shapes.ts'
import { swapCase } from './spelling.ts'

/** The characters of names, most frequent in English first; their places are short where they are low. Part of link format 1. */
const RANKED = [...' eartionslhdcumgpbkyfwvjxzq\'-.,&()!?0123456789:/"']
const PLACES = new Map(RANKED.map((letter, place) => [letter, place + 2]))
const END = 0
const OTHER = 1

/**
 * A title or the name of someone: made of letters rather than of words of the trade, so it
 * is written letter by letter.
 * @param place column of the text's place among those of its kind, latest first, from 1; 0 is a new one
 * @param letters column of the letters' places in the list above, shared by all names
 * @param others column of the code points of letters that are not in it
 */
export function nameShape(place: number, letters: number, others: number): Shape<string> {
  return {
    write(name, to) {
      const known = toFront(latestOf<string>(to.memory, place), name) + 1
      to.put(place, known)
      if (known > 0) return
      for (const letter of swapCase(name, 'names')) {
        to.put(letters, PLACES.get(letter) ?? OTHER)
        if (!PLACES.has(letter)) to.put(others, letter.codePointAt(0)!)
      }
      to.put(letters, END)
    },
    read(from) {
      const known = latestOf<string>(from.memory, place)
      const at = from.take(place)
      const name =
        at === 0
          ? spelledOut(
              () => from.take(letters),
              () => from.take(others),
            )
          : given(known[at - 1])
      toFront(known, name)
      return name
    },
  }
}

function spelledOut(nextPlace: () => number, nextOther: () => number): string {
  let name = ''
  for (let place = nextPlace(); place !== END; place = nextPlace()) {
    name += place === OTHER ? String.fromCodePoint(nextOther()) : given(RANKED[place - 2])
  }
  return swapCase(name, 'names')
}
