/** Characters nobody sees: soft hyphens, joiners, marks of direction and byte order, variation selectors. */
const UNSEEN = /\p{Cf}|[\ufe00-\ufe0f]|\u034f/gu
/** White space in a line. */
const BLANKS = /[^\S\n\r\u2028\u2029]+/g
const LINE_ENDS = / ?[\n\r\u2028\u2029]\s*/g
/** The marks a mail puts before the lines it quotes. */
const QUOTE_MARKS = /\n[ \n>|]*/g
/** Quoted-printable ends a line that goes on with = (RFC 2045, section 6.7). */
const SOFT_BREAK = /=[ \n]/g
/** What typing aids make of a hyphen. */
const HYPHENS = /[\u2010\u2011\u2212]/g
/** Markdown keeps a character from marking anything up by a backslash before it. */
const BACKSLASH = /\\[ \n]?(?=[!-/:-@[-`{-~])/g
/** What may be read out of what was read out: an address in an address in a mail, and one more of each. */
const MOST_ROUNDS = 6

/** A byte as %2D or, in quoted-printable, as =2D; a line may have been broken inside it. */
const byte = (signs: string, high: string) => `[${signs}][ \\n]?${high}[ \\n]?[0-9a-f]`

function escapes(signs: string) {
  const [ascii, lead, more] = ['[0-7]', '[c-f]', '[89ab]'].map((high) => byte(signs, high))
  return { ascii: new RegExp(ascii!, 'gi'), wide: new RegExp(`${lead}(?:[ \\n]?${more}){1,3}`, 'gi') }
}

const PERCENT = escapes('%')
const PERCENT_AND_EQUALS = escapes('%=')

const ENTITY = /&([#a-z0-9 \n]{2,24});/gi
/** Those of HTML's names that stand for something in a link, or for nothing that is seen. */
const NAMED: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  num: '#',
  period: '.',
  lowbar: '_',
  hyphen: '-',
  dash: '-',
  nbsp: ' ',
  shy: '',
  zwnj: '',
  zwj: '',
}

/**
 * A text as it was before programs quoted it, wrapped its lines and wrote its characters in other ways: as HTML entities,
 * percent-encoded (RFC 3986), in quoted-printable, behind backslashes, each also twice. What is left of white space is a
 * blank or, where a line ended in it, a line feed. The work grows with the text's length and no faster.
 *
 * @param equals whether =2D is a character in quoted-printable; else it is a soft line break that lost its line, before "2D"
 */
export function unwrapped(text: string, equals: boolean): string {
  const escaped = equals ? PERCENT_AND_EQUALS : PERCENT
  let read = tidy(text)
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = tidy(read.replace(escaped.wide, wideOf).replace(escaped.ascii, asciiOf).replace(ENTITY, entityOf))
    if (next === read) break
    read = next
  }
  return read
}

const tidy = (text: string): string =>
  text
    .replace(UNSEEN, '')
    .replace(BLANKS, ' ')
    .replace(LINE_ENDS, '\n')
    .replace(QUOTE_MARKS, '\n')
    .replace(SOFT_BREAK, '')
    .replace(HYPHENS, '-')
    .replace(BACKSLASH, '')

const asciiOf = (written: string): string => String.fromCharCode(Number.parseInt(digitsOf(written), 16))

/** A character beyond ASCII, in UTF-8; what is none stays as it is. */
function wideOf(written: string): string {
  try {
    return decodeURIComponent(digitsOf(written).replace(/../g, '%$&'))
  } catch {
    return written
  }
}

const digitsOf = (written: string): string => written.replace(/[%= \n]/g, '')

function entityOf(entity: string, written: string): string {
  const name = written.replace(/[ \n]/g, '').toLowerCase()
  const [, digits] = /^#(x[0-9a-f]{1,6}|[0-9]{1,7})$/.exec(name) ?? []
  if (digits === undefined) return NAMED[name] ?? entity
  const point = Number(`0${digits}`)
  return point <= 0x10ffff ? String.fromCodePoint(point) : entity
}
