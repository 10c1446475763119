import type { en } from '#words/en/index.ts'
import { and, clock, duration, number, percent, plural } from '#words/forms.ts'
import { measures } from './measures.ts'

const AIMS = {
  mixed: 'von allem etwas',
  climbs: 'Berge',
  intervals: 'Intervalle',
  endurance: 'Ausdauer',
  rhythm: 'Fahren auf dem Beat',
}

const LEVEL_CLASSES = { beginner: 'eine Einsteigerstunde', mixed: 'eine gemischte Stunde', advanced: 'eine Stunde für Fortgeschrittene' }

const NAMES = {
  lowHill: 'kleiner Berg',
  seatedClimb: 'Berg im Sitzen',
  standingClimb: 'Berg im Stehen',
  hoverClimb: 'Berg im Hover',
  hover: 'Hover',
  standingFlat: 'Flachstück im Stehen',
  standingRun: 'Laufen im Stehen',
  easyFlat: 'lockeres Flachstück',
  flat: 'Flachstück',
  briskFlat: 'zügiges Flachstück',
  strongFlat: 'kräftiges Flachstück',
  steadyFlat: 'gleichmäßiges Flachstück',
  tempo: 'Tempo',
  seatedHold: 'Halten im Sitzen',
  standingHold: 'Halten im Stehen',
  recover: 'Erholung',
  rollOut: 'Ausrollen',
  stretch: 'Dehnen',
  jumps: 'Jumps',
  push: 'Push',
  standingPush: 'Push im Stehen',
  surge: 'Antritt',
  standingSurge: 'Antritt im Stehen',
}

const GROUNDS = {
  climb: 'Berg im Sitzen und Stehen',
  seatedClimb: 'Berg im Sitzen',
  tempo: 'Tempo',
  rollOut: 'Ausrollen',
  rollOutAndStretch: 'Ausrollen und Dehnen',
  recovery: 'Erholung',
  recoveryWithFlat: 'Erholung mit lockerem Flachstück',
  flat: 'Flachstück',
  hold: 'Halten im Sitzen',
  stretch: 'Dehnen',
}

const EXTRAS = {
  push: 'Pushes',
  surge: 'Antritte',
  tallClimb: 'Berge im Stehen',
  run: 'Laufen im Stehen',
  tallFlat: 'Flachstücke im Stehen',
}

const MOVES: Readonly<Record<string, string>> = {
  jump: 'Jumps',
  'side lean': 'Seitneigungen',
  press: 'Liegestütze',
  corner: 'Ecken',
  'travel-back': 'Travel-Backs',
}

const STRIKES = { 0.5: 'in halbem Tempo', 1: 'auf dem Beat', 2: 'in doppeltem Tempo' }

const placed = (rests: readonly { song: string; share: number }[]) => and(rests.map(({ song, share }) => `${song} (bei ${percent(share)})`))

export const drafts: typeof en.drafts = {
  shape: ({ warmUp, waves, coolDown, level, minutes }) => {
    const work =
      waves === 0 ? 'gleichmäßiges Fahren' : waves === 1 ? 'eine Welle Arbeit' : `${waves} Wellen Arbeit, jede höher als die davor`
    return `Warm-up ${duration(warmUp)}, ${work} und ${duration(coolDown)} Cool-down: was ${LEVEL_CLASSES[level]} von ${minutes} Minuten an beiden Enden braucht.`
  },
  restsOnly: ({ rests }) => `Zwischendurch herunter geht es in ${placed(rests)}.`,
  noFinish: 'Kein Song ist ein Finale: Dafür sind es zu wenige Songs mit Arbeit.',
  peak: ({ song, share, rests }) => {
    const peak = `Das Finale ist ${song} und endet bei ${percent(share)} der Stunde: spät genug als Höhepunkt, früh genug zum Herunterkommen`
    return rests.length === 0
      ? `${peak}.`
      : `${peak}; locker ${rests.length === 1 ? 'ist' : 'sind'} ${placed(rests)}, damit dafür noch Kraft in den Beinen ist.`
  },
  ground: ({ tempoKnown, onBeat, songs, moves, own }) => {
    const beat =
      onBeat === songs
        ? 'jeder Song wird auf dem Beat gefahren'
        : onBeat === 0
          ? 'die Songs werden neben dem Beat gefahren'
          : `${onBeat} von ${songs} Songs werden auf dem Beat gefahren`
    const ground = tempoKnown
      ? `Das Tempo entscheidet, was Berg, Laufen oder Push wird: ${beat}`
      : 'Kein Tempo ist bekannt, also entscheidet die Abwechslung, was Berg, Laufen oder Push wird, und jede Trittfrequenz ist angegeben'
    const taught = moves.length === 0 ? '' : `; zuerst einfach und später mit mehr: ${and(moves)}`
    return `${ground}${taught}${own === null ? '' : `; das Finale endet mit etwas, das kein anderer Song hat: ${own}`}.`
  },
  tooLong: ({ seconds }) => `Die Songs sind ${duration(seconds)} länger als die Stunde; nimm einen heraus oder lass einige früher enden.`,
  stillOpen: ({ seconds, songs }) => `Noch ${duration(seconds)} frei: etwa ${plural(songs, 'Song', 'Songs')} dazunehmen.`,

  song: ({ song, role, ridden, energy, bpm, strikes, fresh, loud, story }) => {
    const place = role === 'finish' ? ', das Finale' : role === 'warmUp' ? ', zum Aufwärmen' : ''
    const what = `${song}: ${role === 'recovery' && !ridden.startsWith('Erholung') ? 'Erholung, ' : ''}${ridden}${place}${energy === null ? '' : `, Energie ${energy} von 5`}`
    const legs =
      bpm === null
        ? '; Trittfrequenz angegeben, weil kein Tempo bekannt ist.'
        : strikes === null
          ? `; neben dem Beat, weil ${number(bpm, 1)} bpm keine passende Trittfrequenz ergeben.`
          : `, ${measures.rpm((bpm * strikes) / 2)} ${STRIKES[strikes]}.`
    const news = fresh.length === 0 ? '' : ` Neu hier: ${and(fresh)}.`
    const quiet = story === null ? '' : `; am längsten leise ab ${clock(story)}, mit Platz für eine Geschichte`
    const sound = loud.length === 0 ? '' : ` Laut wird es ab ${and(loud.map(clock))}, dort liegt die Arbeit${quiet}.`
    return `${what}${legs}${news}${sound}`
  },
  ridden: ({ ground, extras }) =>
    [...(ground === null ? [] : [GROUNDS[ground]]), ...(extras.length > 0 ? [and(extras)] : [])].join(', dazu '),
  extra: ({ kind }) => EXTRAS[kind],
  moves: ({ move }) => MOVES[move] ?? move,
  name: ({ name }) => NAMES[name],

  drafted: ({ songs, draft }) => `${songs === 1 ? 'Ein Song' : `${songs} Songs`} entworfen (Entwurf ${draft})`,

  title: 'Entwurf machen lassen',
  where: ({ songs, level, minutes }) => `erster Entwurf für ${plural(songs, 'Song', 'Songs')}, ${level}, ${minutes} Minuten`,
  noOpenSong: 'kein leerer Song',
  use: 'Entwurf übernehmen',
  another: 'anderer Entwurf',
  aim: 'Ziel',
  aimName: ({ aim }) => AIMS[aim],
  draft: 'Entwurf',
  hint: 'Mit derselben Nummer kommt derselbe Entwurf. Songs mit Blöcken bleiben, wie sie sind.',
  driveHint: 'Wo Klang oder Energie eines Songs bekannt sind, entscheiden sie, was Höhepunkt und was Arbeit ist.',
  songBySong: 'Song für Song',
  everySongFilled: 'Jeder Song hat Blöcke. Füge einen Song hinzu oder lösche die Blöcke eines Songs, um ihn entwerfen zu lassen.',
  working: 'Wird berechnet …',
  clean: 'Dieser Entwurf: nichts zu beheben.',
  checks: ({ fix, consider, know }) =>
    `Dieser Entwurf: ${[fix > 0 && `${fix} zu beheben`, consider > 0 && `${consider} zu überlegen`, know > 0 && `${know} gut zu wissen`].filter((part) => part !== false).join(', ')}.`,
}
