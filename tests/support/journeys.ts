import type { Chance } from '#tests/fuzz/chance.ts'

/** What programs and people do to a link on its way, with all of it still there. */
export interface Journey {
  name: string
  /** @param text an address with a link in it, or what another journey made of one */
  send: (text: string, chance: Chance) => string
}

const TRACKERS = ['fbclid=IwAR0_aB-3kXq9Zt7', 'utm_source=newsletter&utm_medium=email', 'x=y', 'mc_eid=6f1c', 'gclid=Cj0KCQ', 'si=r1.5']
const MARKS = [
  '!',
  ']',
  '*',
  ':',
  '/',
  '”',
  '’',
  '.',
  ',',
  ';',
  '?',
  '…',
  '...',
  '。',
  '、',
  '！',
  '）',
  '**',
  '_',
  '__',
  '`',
  '```',
  '|',
  '~~',
  '\\',
  '🙂',
]
const UNSEEN = [
  '\u200b',
  '\u200c',
  '\u200d',
  '\u2060',
  '\ufeff',
  '\u00ad',
  '\u200e',
  '\u200f',
  '\u202a',
  '\u202c',
  '\u2066',
  '\u2069',
  '\ufe0f',
]
const SPACES = ['\u00a0', '\u202f', ' ', '\u3000', '\t', '\u2007']
const ENTITIES: Readonly<Record<string, readonly string[]>> = {
  '-': ['&#45;', '&#x2d;', '&#x2D;'],
  _: ['&#95;', '&lowbar;', '&#x5F;'],
  '#': ['&#35;', '&num;'],
  '.': ['&#46;', '&period;'],
  '&': ['&amp;', '&#38;'],
  '>': ['&gt;'],
  '<': ['&lt;'],
  '"': ['&quot;'],
}

/** Puts pieces into a text at a few places. */
function strewn(text: string, pieces: readonly string[], chance: Chance): string {
  let made = text
  for (let times = 1 + chance.below(12); times > 0; times--) {
    const at = chance.below(made.length + 1)
    made = made.slice(0, at) + chance.pick(pieces) + made.slice(at)
  }
  return made
}

function wrapped(text: string, chance: Chance, lineBreak: string): string {
  const width = 20 + chance.below(60)
  return text.replace(new RegExp(`(?:[^\\n\\r]){${width}}`, 'g'), `$&${lineBreak}`)
}

/** RFC 2045, section 6.7: bytes as =XX where they must be, lines of 76 characters at most. */
function quotedPrintable(text: string): string {
  const lines = text.split(/\r?\n/).map((line) => {
    const pieces = [...line].map((letter) =>
      letter === '='
        ? '=3D'
        : /[\x20-\x7e\t]/.test(letter)
          ? letter
          : [...new TextEncoder().encode(letter)].map((byte) => `=${byte.toString(16).toUpperCase().padStart(2, '0')}`).join(''),
    )
    let [made, width] = ['', 0]
    for (const piece of pieces) {
      if (width + piece.length > 75) [made, width] = [`${made}=\r\n`, 0]
      made += piece
      width += piece.length
    }
    return made
  })
  return lines.join('\r\n')
}

const escaped = (text: string, chance: Chance): string =>
  encodeURIComponent(text).replace(/[-_.]/g, (letter) => (chance.oneIn(2) ? `%${letter.charCodeAt(0).toString(16)}` : letter))

const mixedCase = (text: string, chance: Chance): string =>
  text.replace(/%[0-9a-f]{2}/gi, (byte) => (chance.oneIn(2) ? byte.toUpperCase() : byte.toLowerCase()))

/** As an address bar writes what it is given. */
const asAddress = (text: string): string => text.replace(/[\s"<>`]|[^\x20-\x7e]+/gu, encodeURIComponent)

/** Every way a link has been known to travel; whatever of these happened to it, it must open. */
export const JOURNEYS: readonly Journey[] = [
  { name: 'tracked behind', send: (text, chance) => text + chance.pick(['?', '&', '&amp;', '/?']) + chance.pick(TRACKERS) },
  { name: 'tracked before the #', send: (text, chance) => text.replace(/#(?=r)/, `${chance.pick(['?', '&'])}${chance.pick(TRACKERS)}#`) },
  {
    name: 'at the end of a sentence',
    send: (text, chance) => text + chance.pick(MARKS) + chance.pick(['', chance.pick(MARKS), ' Thanks']),
  },
  {
    name: 'marked up',
    send: (text, chance) => ((mark) => mark + text + mark)(chance.pick(['**', '*', '_', '__', '`', '|', '~', '"', '***'])),
  },
  { name: 'with characters nobody sees', send: (text, chance) => strewn(text, UNSEEN, chance) },
  { name: 'with spaces in it', send: (text, chance) => strewn(text, SPACES, chance) },
  {
    name: 'quoted',
    send: (text, chance) =>
      ((mark) => mark + wrapped(text, chance, `\r\n${mark}`).replace(/\n(?![>| ])/g, `\n${mark}`))(
        chance.pick(['> ', '>', '>> ', '> > > ', '| ']),
      ),
  },
  {
    name: 'wrapped and indented',
    send: (text, chance) => wrapped(text, chance, chance.pick(['\n', '\r\n', '\n    ', '\r\n\t', '\u2028'])),
  },
  { name: 'quoted-printable', send: quotedPrintable },
  { name: 'percent-encoded', send: (text, chance) => mixedCase(escaped(text, chance), chance) },
  { name: 'percent-encoded twice', send: (text, chance) => mixedCase(escaped(escaped(text, chance), chance), chance) },
  { name: 'put into an address bar', send: asAddress },
  { name: 'in a message', send: (text) => `Hi Odalys,\n\nhere is my ride: ${text} see you at 6.\n\nR.` },
  { name: 'in a line of a message', send: (text) => `Here is my ride (r1. draft, so to say): ${text}\nSee you!` },
  {
    name: 'in HTML',
    send: (text, chance) =>
      `<a href="${text.replace(/[-_#.&<>"]/g, (letter) => (chance.oneIn(2) ? chance.pick(ENTITIES[letter]!) : letter))}">ride</a>`,
  },
  { name: 'in markdown', send: (text) => `Try [my ride](${text}) today` },
  { name: 'in markdown that escapes', send: (text) => text.replace(/[_*#.-]/g, '\\$&') },
  { name: 'in angle brackets', send: (text) => `<${text}>` },
  { name: 'in brackets', send: (text, chance) => chance.pick([`(${text})`, `[${text}]`, `“${text}”`, `「${text}」`, `{${text}}.`]) },
  { name: 'with its host in capitals', send: (text) => text.replace(/^https?:\/\/[a-z.]+/, (host) => host.toUpperCase()) },
  { name: 'twice in one text', send: (text) => `[${text}](${text})` },
  { name: 'after a link that was cut', send: (text) => `${text.slice(0, Math.floor(text.length * 0.6))}… \nSorry, once more:\n${text}` },
  { name: 'with its hyphens set', send: (text) => text.replace(/--/g, '—').replace(/-/g, '\u2011') },
]
