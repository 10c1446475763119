import { useMemo, useState } from 'react'
import { placeTyped, type StoryRoom } from '#engine/cues/placeInside.ts'
import { type CueOffer, cueOffers } from '#features/drafting/panel/block/cueOffers.ts'
import { WordsField } from '#features/drafting/panel/rows/WordsField.tsx'
import { addCues } from '#plan/commands/addCues.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import { findBlock } from '#plan/places.ts'
import { formPointsOffered } from '#store/habitsSlice.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { words } from '#words/words.ts'

/** What could be said here and is not, each one press away: the call in the ledger's words, a count-in, a form cue, a story. */
export function CueOffers({ blockId }: { blockId: string }) {
  const store = useAppStore()
  const ride = useApp((state) => state.ride)
  const report = useApp((state) => state.report)
  const bank = useApp(formPointsOffered)
  const [turn, setTurn] = useState(0)
  const offers = useMemo(() => (ride && report ? cueOffers(ride, report, blockId, bank, turn) : {}), [ride, report, blockId, bank, turn])

  const take = ({ cue, replaces }: CueOffer) => {
    const { run, newId, ride: now } = store.getState()
    const cues = now && findBlock(now, blockId)?.block.cues
    if (replaces !== undefined && cues) {
      run(patchBlock(now, { blockId, patch: { cues: cues.map((held) => (held.id === replaces ? { ...held, ...cue } : held)) } }))
    } else run(addCues([{ blockId, cue: { id: newId(), ...cue } }]))
  }
  const tell = (text: string) => {
    const { ride: now, report: then } = store.getState()
    const played = then?.blocks.find(({ block, from, to }) => block.id === blockId && to > from)
    if (now && then && played) take({ cue: { moment: 'story', lead: placeTyped(now, then, played.index, text), text } })
  }
  const { call, countIn, form, story } = offers
  return (
    <div className="panel-offers panel-edit-only">
      {call && (
        <Button tone="quiet" onClick={() => take(call)}>
          {call.replaces
            ? words.panelsBlock.sayFirst({ words: firstSentence(call.cue.text) })
            : words.panelsBlock.announce({ words: call.cue.text })}
        </Button>
      )}
      {countIn && (
        <Button tone="quiet" onClick={() => take(countIn)}>
          {words.panelsBlock.addCountIn}
        </Button>
      )}
      {form && (
        <span className="panel-offer-form">
          <Button tone="quiet" onClick={() => take(form)}>
            {words.panelsBlock.formCue({ words: form.cue.text })}
          </Button>
          {bank.length > 1 && (
            <button
              type="button"
              className="panel-link"
              aria-label={words.panelsBlock.anotherFormCue}
              onClick={() => setTurn((turn + 1) % bank.length)}
            >
              {words.panelsBlock.another}
            </button>
          )}
        </span>
      )}
      {story && (
        <WordsField
          label={words.panelsBlock.addStory}
          hideLabel
          value=""
          placeholder={words.panelsBlock.storyHint}
          hint={roomOfStory(story)}
          onCommit={(typed) => {
            const text = typed.trim()
            if (text.length > LONGEST) return words.fields.tooLong({ most: LONGEST, length: text.length })
            if (text !== '') tell(text)
            return null
          }}
        />
      )}
    </div>
  )
}

/** What a story has time for here, or what it lacks. */
function roomOfStory({ from, to, words: most, lacks, calmFrom }: StoryRoom): string {
  const free = Math.max(0, to - from)
  if (lacks === 'room') return words.panelsBlock.storyNoRoom({ free })
  if (lacks === 'calm') {
    return calmFrom === undefined ? words.panelsBlock.storyNotCalm : words.panelsBlock.storyCalmFrom({ at: calmFrom })
  }
  return words.panelsBlock.storyRoom({ free, from, words: most })
}

/** Most characters of one cue. */
const LONGEST = 500

const firstSentence = (text: string): string => /^[^.]+\./.exec(text)?.[0] ?? text
