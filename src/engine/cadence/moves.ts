/** One-sided moves: how many counts lie between two accents, in multiples of the move's own counts. */
const ACCENTS: readonly { name: RegExp; period: number }[] = [
  // A jump states one half: up for so many counts, then as long down.
  { name: /^(jump|lift|rise)$/, period: 2 },
  { name: /^travel[- ]?back$/, period: 1 },
  { name: /^((shoulder|elbow|bar|arm) )?press$/, period: 1 },
  { name: /^lean$/, period: 1 },
]

/** Moves by their German names, in lower case. */
const GERMAN: Readonly<Record<string, string>> = {
  sprung: 'jump',
  sprünge: 'jump',
  neigung: 'lean',
  neigungen: 'lean',
  seitneigung: 'side lean',
  seitneigungen: 'side lean',
  liegestütz: 'press',
  liegestütze: 'press',
  liegestützen: 'press',
  ecke: 'corner',
  ecken: 'corner',
  schulterkreisen: 'shoulder roll',
}

/**
 * What a move is told by: its English name in lower case and singular, with the words leaders put after it ("jumps on 8",
 * "Jumps auf 8") left away; a German name is the English one of the same move.
 */
export function plainMove(name: string): string {
  const bare = name
    .trim()
    .toLowerCase()
    .replace(/ (on|in|of|auf) .*$/, '')
  return GERMAN[bare] ?? bare.replace(/(?<=press)es$|(?<!s)s$/, '')
}

/**
 * Counts between two accents of a move, in multiples of its stated counts; undefined for
 * moves without a one-sided accent (rolls, side leans that go both ways, stretches).
 */
export function accentPeriod(name: string): number | undefined {
  const wanted = plainMove(name)
  return ACCENTS.find((accent) => accent.name.test(wanted))?.period
}

/** Jumps alternate between saddle and standing, so they are not an unbroken stand. */
export const isJump = (name: string): boolean => /^(jump|lift|rise)$/.test(plainMove(name))
