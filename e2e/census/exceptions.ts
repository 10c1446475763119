import type { Control } from './controls.ts'
import type { Hand } from './operate.ts'

interface Exception {
  role?: string
  name: string | RegExp
  where?: RegExp
  hand?: Hand
  reason: string
}

/** What nothing on the page follows when it is operated, and why that is right. */
const EXCEPTIONS: readonly Exception[] = [
  { role: 'button', name: 'skip to the page', reason: 'It moves the focus past the header, which only the next Tab shows.' },
  {
    role: 'button',
    name: 'ride',
    where: /> checks$/,
    reason: 'It leads to the details of the ride, which are there already in these scenes.',
  },
  {
    role: 'button',
    name: /^all \(\d+\)$/,
    where: /which checks$/,
    reason: 'It is what is chosen among its like until another one is.',
  },
  {
    role: 'option',
    name: /./,
    where: /> results/,
    hand: 'key',
    reason: 'The focus stays in the field above, whose arrow keys and Enter choose; e2e/search.spec.ts does that.',
  },
  {
    role: 'slider',
    name: /^(?:start|end) of the view$/,
    hand: 'touch',
    reason: 'It is pulled, and a tap leaves it where it is; e2e/gestures.spec.ts pulls it.',
  },
  {
    role: 'option',
    name: /./,
    where: /> what you could say here/,
    hand: 'key',
    reason: 'The focus stays in the field above, whose arrow keys and Enter choose; e2e/cueLine.spec.ts does that.',
  },
  {
    role: 'combobox',
    name: /^cue for “/,
    where: /> write a cue/,
    hand: 'key',
    reason: 'Enter keeps the cue and goes on to the next moment, where undo leaves the line; e2e/cueLine.spec.ts does that.',
  },
  { role: 'text', name: 'link', reason: 'It holds the link to be copied by hand and cannot be written to: a press selects it whole.' },
]

export const reasonFor = ({ role, name, where }: Control, hand: Hand): string | undefined =>
  EXCEPTIONS.find(
    (exception) =>
      (exception.role === undefined || exception.role === role) &&
      (exception.hand === undefined || exception.hand === hand) &&
      (exception.where?.test(where) ?? true) &&
      (typeof exception.name === 'string' ? exception.name === name : exception.name.test(name)),
  )?.reason

/** Files whose controls no scene can bring to the screen, and why. */
export const NOT_DRAWN: readonly { file: string; reason: string }[] = [
  { file: 'src/app/ErrorBoundary.tsx', reason: 'Nothing a hand can do breaks the page; a test of its own breaks it.' },
  { file: 'src/features/leading/FollowBar.tsx', reason: 'It takes two windows; e2e/keeping.spec.ts operates it.' },
  { file: 'src/features/drafting/rehearsal/Habits.tsx', reason: 'The browser of the tests has no voices to choose from.' },
]
