import { capital } from '#engine/roughIn/words/capital.ts'
import type { PostureWords, Voice } from '#engine/roughIn/words/voice.ts'
import { calls as spoken } from '#engine/speech/german/calls.ts'
import { numberWords } from '#engine/speech/german/numberWords.ts'
import { sizeWords } from '#engine/speech/german/settingWords.ts'
import type { Posture } from '#plan/model.ts'
import { moves } from './names.ts'
import { bareSeconds, sayEffort, sayLength } from './numbers.ts'

const ORDINALS = ['', 'Erster', 'Zweiter', 'Dritter', 'Vierter', 'Fünfter', 'Sechster']

const TALL_AGAIN: PostureWords = {
  alone: ['Macht euch groß, aufstehen.', 'Und ganz hoch.', 'Ganz aufstehen.'],
  after: [', dann ganz aufstehen.', ' und ganz hoch.', ', ganz nach oben.'],
  first: false,
}

const POSTURES: Readonly<Record<Posture, PostureWords>> = {
  seated: {
    alone: ['Hinsetzen.', 'Setzt euch.', 'Zurück in den Sattel.', 'Nehmt Platz.', 'Und hinsetzen.'],
    after: [' und hinsetzen.', ', zurück in den Sattel.', ', dann setzt euch.'],
    first: true,
  },
  standing: {
    alone: ['Raus aus dem Sattel.', 'Und aufstehen.', 'Steht auf.', 'Kommt hoch.', 'Hoch mit euch.', 'Aufstehen, groß werden.'],
    after: [', dann hoch.', ' und aufstehen.', ' und groß aufstehen.', ', dann steht auf.', ', dann kommt hoch.', ', raus aus dem Sattel.'],
    first: false,
  },
  hovering: {
    alone: ['Hüfte knapp über den Sattel.', 'Tief in den Hover.'],
    after: [', dann tief in den Hover.', ', Hüfte knapp über den Sattel.'],
    first: false,
  },
  offBike: { alone: ['Runter vom Rad.'], after: ['. Runter vom Rad.'], first: false },
}

const FEET = { left: 'linker', right: 'rechter' } as const

export const calls: Voice['calls'] = {
  bases: ['Sucht euren Grundwiderstand.', 'Startet am Grundwiderstand.', 'Erst der Grundwiderstand.', 'Stellt euren Grundwiderstand ein.'],
  begins: {
    push: ['Jetzt der Push.', 'Da kommt der Push.', 'Und Push.'],
    surge: ['Jetzt der Antritt.', 'Da kommt der Antritt.', 'Und Antritt.'],
    hold: ['Jetzt halten.', 'Da kommt das Halten.'],
    tempo: ['Jetzt Tempo.', 'Gleicher Widerstand.'],
    climb: ['Gleicher Widerstand.', 'Bleibt am Berg.'],
  },
  size: sizeWords,
  turned: (way, steps, bike) => {
    const size = sizeWords(steps, bike)
    return way === 'up'
      ? [`${capital(size)} mehr`, `Dreht ${size} drauf`, `${capital(size)} drauf`, `Gebt ${size} dazu`]
      : [`${capital(size)} weniger`, `Dreht ${size} runter`, `Nehmt ${size} raus`, `${capital(size)} raus`]
  },
  takenTo: (state, bike, datum) => {
    const place = spoken.total(state, bike, datum)
    return [`Dreht ${place}`, `Widerstand ${place}`]
  },
  posture: (to, from) => (to === 'standing' && from === 'hovering' ? TALL_AGAIN : POSTURES[to]),
  jumps: (counts) => {
    if (counts === undefined) return ['Jumps.', 'Rein in die Jumps.', 'Zeit für Jumps.']
    const said = numberWords(counts)
    return [
      `Jumps, ${said} hoch, ${said} runter.`,
      `Jumps auf ${said}.`,
      `${capital(said)} hoch, ${said} runter.`,
      `Hoch für ${said}, runter für ${said}.`,
    ]
  },
  move: ({ name, counts, bothSides, first }) => {
    const said = numberWords(counts)
    const names = moves(name)
    if (!bothSides) return [`${names} auf ${said}.`, `${names}, alle ${said} Zählzeiten.`, `Rein in die ${names}, auf ${said}.`]
    const [one, other] = first === 'right' ? ['rechts', 'links'] : ['links', 'rechts']
    return [`${names}, ${said} ${one}, ${said} ${other}.`, `${capital(said)} ${one}, ${said} ${other}.`, `${names} auf ${said}.`]
  },
  held: (move, point) => `${moves(move)}: ${point}`,
  swapFoot: ['Startfuß wechseln.', 'Wechselt den Startfuß.'],
  swapFootTo: (foot) => [
    `Jetzt führt der ${FEET[foot].slice(0, -2)}e Fuß.`,
    `Wechsel: ${FEET[foot]} Fuß vorn.`,
    `${capital(FEET[foot])} Fuß führt jetzt.`,
  ],
  footLeads: (foot) => [
    `${capital(FEET[foot])} Fuß führt.`,
    `${capital(FEET[foot])} Fuß auf die Eins.`,
    `Der ${FEET[foot].slice(0, -2)}e Fuß nimmt die Eins.`,
    `Führt mit ${foot === 'left' ? 'links' : 'rechts'}.`,
    `Findet den Beat, ${FEET[foot]} Fuß zuerst.`,
    `${capital(FEET[foot])} Fuß zuerst.`,
  ],
  lengths: ({ seconds, effort: level, builds, counts }) => {
    const length = sayLength(seconds)
    const effort = sayEffort(level)
    if (builds) return [`${capital(length)}, steigern bis ${effort}.`, `Steigert euch ${length}, bis ${effort}.`]
    return [
      `${capital(length)}, ${effort}.`,
      `${capital(length)} bei ${effort}.`,
      `Haltet das ${length}, ${effort}.`,
      ...(seconds < 58 ? [`${capital(effort)} für ${length}.`] : []),
      ...(counts === 32 || counts === 64 ? [`${counts === 32 ? 'Zweiunddreißig' : 'Vierundsechzig'} Zählzeiten, ${effort}.`] : []),
    ]
  },
  plainLengths: (seconds) => [`${capital(sayLength(seconds))}.`, `Haltet das ${sayLength(seconds)}.`],
  builds: (effort) => [
    `Steigert euch, bis ${sayEffort(effort)}.`,
    'Lasst es mit der Musik wachsen.',
    'Jede Phrase ein bisschen mehr.',
    `Baut auf, bis ${sayEffort(effort)}.`,
    'Erst zurückhalten, dann laufen lassen.',
    'Wachst mit dem Song.',
  ],
  placeOf: (place, of, seconds) => {
    const length = sayLength(seconds)
    if (place === of) return [`Der letzte, ${length}.`, 'Das ist der letzte davon.']
    return [`${ORDINALS[place]} von ${numberWords(of)}, ${length}.`]
  },
  lastUp: (seconds) => [`Das letzte Mal hoch, ${sayLength(seconds)}.`],
  rests: (seconds) => {
    const length = sayLength(seconds)
    return seconds < 57
      ? [`${capital(length)} locker.`, `Ihr habt ${length}.`, `${capital(bareSeconds(seconds))} lockere Sekunden.`]
      : [`${capital(length)} locker.`]
  },
  countsLeft: [
    [16, ['Letzte sechzehn.', 'Noch sechzehn.', 'Letzte zwei Achter.', 'Noch zwei Achter.']],
    [24, ['Noch drei Achter.', 'Letzte drei Achter.']],
    [8, ['Letzter Achter.', 'Noch acht.']],
  ],
  secondsLeft: (left) => {
    const number = bareSeconds(left)
    return [`Noch ${number} Sekunden.`, `${capital(number)} Sekunden noch.`, `Letzte ${number} Sekunden.`, `Nur noch ${number} Sekunden.`]
  },
  standSoon: (left) => {
    const number = bareSeconds(left)
    return [
      `Noch ${number} Sekunden, dann stehen wir auf.`,
      `In ${number} Sekunden raus aus dem Sattel.`,
      `In ${number} Sekunden geht es hoch.`,
    ]
  },
}
