import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { constantsOf } from '#engine/constants.ts'
import { checkClaims } from '#engine/cues/claims/checkClaims.ts'
import type { Claim, Meaning } from '#engine/cues/claims/claim.ts'
import { claimsIn } from '#engine/cues/claims/claimsOf.ts'
import { viewPlan } from '#engine/cues/claims/plan/planView.ts'
import { keepLedger } from '#engine/ledger/keepLedger.ts'
import { layTimeline } from '#engine/timeline/layTimeline.ts'
import { editBlocksOf } from '#plan/edits.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { EVERY_SENTENCE } from './spoken/everySentence.ts'

// What is read in every sentence, and what is said of it in some of the blocks, kept as text: a change of the grammar shows there what
// else it has changed. Right or wrong is the other tests' business; `npx vitest run -u` keeps the new text once it was read.

it('every sentence is read as it was', async () => {
  const readings = EVERY_SENTENCE.map((text) => [text, ...claimsIn(text, 'turn').map((claim) => `    ${sayClaim(text, claim)}`)].join('\n'))
  await expect(`${readings.join('\n')}\n`).toMatchFileSnapshot('spoken/readings.txt')
})

it('every sentence is judged as it was, announced or said within some of the blocks', async () => {
  const judged = EVERY_SENTENCE.flatMap((text, index) => {
    const said = verdictsOf(text, index)
    return said.length > 0 ? [[text, ...said.map((one) => `    ${one}`)].join('\n')] : []
  })
  await expect(`${judged.join('\n')}\n`).toMatchFileSnapshot('spoken/verdicts.txt')
})

function sayClaim(text: string, { from, to, meanings, slots }: Claim): string {
  const forms = slots.map(({ from: start, to: end, figure, form }) => `${figure} “${text.slice(start, end)}” ${sayFields(form)}`)
  return [`“${text.slice(from, to)}”`, meanings.map(sayMeaning).join(' or '), ...forms].join(' | ')
}

const sayMeaning = ({ about, ...more }: Meaning): string => `${about} ${sayFields(more)}`.trim()

const sayFields = (fields: object): string =>
  Object.entries(fields)
    .map(([name, value]) => `${name}=${typeof value === 'object' ? `(${sayFields(value)})` : value}`)
    .join(' ')

const REFERENCE: Ride = JSON.parse(readFileSync(join(import.meta.dirname, 'spoken/spoken-numbers.json'), 'utf8')).ride

const DRAWN = 'a word that lasts while the others are said'
const asked = computeRide({
  ...REFERENCE,
  sections: REFERENCE.sections.map((section) =>
    editBlocksOf(section, (block) => ({
      ...block,
      cues: (['announce', 'form'] as const).map(
        (moment): Cue => ({ id: `${block.id} ${moment}`, moment, lead: { counts: moment === 'form' ? 20 : 4 }, text: DRAWN }),
      ),
    })),
  ),
})
const ledger = keepLedger(REFERENCE, layTimeline(REFERENCE).blocks)
const view = viewPlan(REFERENCE, asked.blocks, asked.sections, ledger, constantsOf(REFERENCE))

/** Each sentence is told at every so many of the places, another first one for each, so that the file can be read. */
const EVERY = 12

/** What is said of a sentence, and where it is told. */
function verdictsOf(text: string, first: number): string[] {
  const told = new Map<string, string[]>()
  for (const line of asked.cues.lines.filter((_, place) => place % EVERY === first % EVERY))
    for (const { said, planned } of checkClaims({ ...line, cue: { ...line.cue, text } }, view)) {
      const what = `“${said}” → “${planned}”`
      told.set(what, [...(told.get(what) ?? []), `${line.cue.id} at ${Math.round(line.from)}`])
    }
  return [...told].map(([what, places]) => `${what}: ${places.join(', ')}`)
}
