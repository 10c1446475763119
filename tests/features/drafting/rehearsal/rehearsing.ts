import { createPlayer } from '#audio/player.ts'
import { createDeck } from '#features/drafting/rehearsal/deck.ts'
import { createRehearsal } from '#features/drafting/rehearsal/rehearsal.ts'
import { createSongHearing } from '#features/drafting/rehearsal/songHearing.ts'
import type { Ride } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import type { Voice } from '#plan/sound/voice.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { fakeSoundCard } from '#tests/support/fakeSoundCard.ts'
import { leadRide } from '#tests/support/leading.ts'
import { countedIds } from '#tests/support/smallRide.ts'

/** Time before the sound card begins, and until it is heard. */
export const BEHIND = 0.06 + 0.02

/** A voice that says when it was asked to say what. */
export function noteVoice(now: () => number) {
  const said: { text: string; rate: number; at: number; onSaid: (seconds: number) => void }[] = []
  const state = { hushed: 0 }
  const voice: Voice = {
    names: () => [{ id: 'stub', name: 'stub', lang: 'en' }],
    onNames: () => () => {},
    say: (text, { rate, onSaid }) => said.push({ text, rate, at: now(), onSaid }),
    hush: () => state.hushed++,
  }
  return { voice, said, state }
}

/** The four sections of `leadRide`, the first song's file at hand, played on a sound card whose time the test passes. */
export async function rehearsing(change: (ride: Ride) => Ride = (ride) => ride) {
  const card = fakeSoundCard()
  const spoken = noteVoice(() => card.now)
  const plain = leadRide()
  const [one, ...rest] = plain.sections
  const song = { ...one!.song!, grid: gridOfTempo(120, 0.5), lengthSeconds: 97, fingerprint: 'first' }
  const ride = change({ ...plain, sections: [{ ...one!, song }, ...rest] })
  const store = createAppStore({
    newId: countedIds('new'),
    shelf: null,
    openPlayer: async (fileOf, events) => createPlayer(card.world, fileOf, events),
    voice: spoken.voice,
  })
  store.setState({ soundFiles: new Map([['first', new File([new Uint8Array(97)], 'first.wav')]]) })
  store.getState().openRide(ride)
  const deck = createDeck(store)
  const rehearsal = createRehearsal(store, deck)
  const hearing = createSongHearing(store, deck)
  const leave = [rehearsal.attend(), hearing.attend(), deck.attend()]
  /** Time passes in steps of a timer. */
  const pass = (seconds: number) => {
    for (let left = seconds; left > 1e-9; left -= 0.05) card.pass(Math.min(0.05, left))
  }
  return {
    card,
    store,
    deck,
    rehearsal,
    hearing,
    pass,
    ...spoken,
    phase: () => rehearsal.snapshot().phase,
    leave: () => {
      for (const end of leave) end()
    },
  }
}

/** What was begun and needs nothing of the card is done. */
export const settle = () => new Promise((done) => setTimeout(done, 0))
