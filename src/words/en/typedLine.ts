import { plural, setting } from '#words/forms.ts'

/** The field that blocks are typed in as lines, and what there is to say of a line. */

type Simple = 'unknown' | 'twice' | 'needsNumber' | 'noKind' | 'howLong' | 'onOrOff' | 'needsMove' | 'tooLong'
type Outside = 'effortOutside' | 'rpmOutside' | 'countsOutside' | 'lengthOutside' | 'roundsOutside'

/** Why a part of a line is not taken. */
type Problem =
  | { kind: Simple | Outside; word: string }
  | { kind: 'noSuchStep'; word: string; low: number; high: number; stepsPerUnit: number }
  | { kind: 'partOfCount'; word: string; unit: number }

function problem(of: Problem): string {
  switch (of.kind) {
    case 'unknown':
      return `“${of.word}” isn’t a word this line knows.`
    case 'twice':
      return `“${of.word}” says something the line has already said.`
    case 'needsNumber':
      return `“${of.word}” needs a number after it.`
    case 'noKind':
      return 'Name a kind of block: flat, climb, jumps, push, recover.'
    case 'howLong':
      return `“${of.word}” of what? There is no beat here: type 45s or 1:30.`
    case 'onOrOff':
      return `“${of.word}”: on or off?`
    case 'needsMove':
      return `“${of.word}” needs a move, like jumps.`
    case 'tooLong':
      return 'This line is too long. Start a new one.'
    case 'effortOutside':
      return `“${of.word}”: effort goes from 0 to 10.`
    case 'rpmOutside':
      return `“${of.word}” is no cadence anybody rides.`
    case 'countsOutside':
      return `“${of.word}” is too many or too few counts for a move.`
    case 'lengthOutside':
      return `“${of.word}” is too long or too short for a block.`
    case 'roundsOutside':
      return `“${of.word}”: a set has 1 to 100 rounds.`
    case 'noSuchStep':
      return `“${of.word}” isn’t on this bike’s knob; ${setting(of.low, of.stepsPerUnit)} and ${setting(of.high, of.stepsPerUnit)} are.`
    case 'partOfCount':
      return `“${of.word}” ends between two counts.`
  }
}

export const typedLine = {
  type: 'type a block',
  typeDo: 'type a block after this one',
  edit: 'edit as a line',
  editDo: 'show the block as a line, and change it there',
  newLine: 'new block',
  editLine: ({ name }: { name: string }) => `“${name}” as a line`,
  placeholder: 'seated climb 8 to 2 effort 7',
  problem,
  /** Before the problem of one of several pasted lines. */
  ofLine: ({ line, text }: { line: number; text: string }) => `Line ${line}: ${text}`,
  take: ({ blocks }: { blocks: number }) => `add ${plural(blocks, 'block', 'blocks')}`,
  change: 'change the block',
  close: 'close',
  left: 'What the line doesn’t say, like cues and notes, stays as it is.',
  cuesElsewhere: 'Cues of a block that is there already are edited in its details.',
  addPattern: ({ name }: { name: string }) => `add ${name}`,
  suggestions: 'patterns, and words to finish with',
  help: 'what can be typed',
  keys: 'Begin a pattern’s name and press Enter to add it, yours too. Enter adds what the line says and opens the next one, Tab finishes a word, Escape closes. Blocks on one line go between slashes; several lines can be pasted.',
  examples: [
    { line: 'seated climb 8 to 2½ effort 7 wide', means: '8 eights, knob at 2½, effort 7, hands wide' },
    { line: 'jumps on 4 x8, add half', means: 'eight jumps, each on 4 counts, half a turn on' },
    { line: 'flat 16 effort 4 to 6', means: '16 eights, effort ramps from 4 to 6' },
    { line: 'push 20s, one turn on', means: '20 seconds' },
    { line: 'rest 4 sip, one turn off', means: '4 eights easy, with a drink' },
    { line: 'climb 8 “Up we go.” “Hips back.”', means: 'said before the climb, then in it' },
    { line: 'climb 8 / rest 4 / climb 12 effort 8', means: 'three blocks' },
    { line: '4 rounds: push 4 effort 9 / rest 4', means: 'a set' },
  ] as readonly { line: string; means: string }[],
}
