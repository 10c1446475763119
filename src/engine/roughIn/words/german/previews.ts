import { capital } from '#engine/roughIn/words/capital.ts'
import type { Kind } from '#engine/roughIn/words/passage.ts'
import type { Gist, Voice } from '#engine/roughIn/words/voice.ts'
import { numberWords } from '#engine/speech/german/numberWords.ts'
import { moves } from './names.ts'
import { sayEffort, sayLength, sayTimes } from './numbers.ts'

/** One of a kind with its article, and several. */
const NAMES: Partial<Record<Kind, readonly [one: string, many: string]>> = {
  tallClimb: ['ein Berg im Stehen', 'Berge im Stehen'],
  run: ['ein Lauf im Stehen', 'Läufe im Stehen'],
  climb: ['ein Berg im Sattel', 'Berge im Sattel'],
  tempo: ['ein Stück Tempo', 'Stücke Tempo'],
  flat: ['ein schnelles Stück', 'schnelle Stücke'],
  tallFlat: ['ein Flachstück im Stehen', 'Flachstücke im Stehen'],
  surge: ['ein Antritt', 'Antritte'],
  push: ['ein Push', 'Pushes'],
  hold: ['ein Halten', 'Stücke zum Halten'],
}

/** "je dreißig Sekunden", "am längsten vierzig Sekunden", "vierzig Sekunden". */
function lengths({ count, others, least, most }: Gist): string {
  const high = sayLength(most)
  if (count + others === 1) return high
  return sayLength(least) === high ? `je ${high}` : `am längsten ${high}`
}

/** "drei Berge im Stehen", "zwei Antritte und noch zwei Belastungen". */
function phraseOf({ kind, count, others, move }: Gist): string {
  const [one, many] = NAMES[kind] ?? [`eine Runde ${moves(move || 'jump')}`, `Runden ${moves(move || 'jump')}`]
  const own = count === 1 ? one : `${numberWords(count)} ${many}`
  if (others === 0) return own
  return `${own} und noch ${others === 1 ? 'eine Belastung' : `${numberWords(others)} Belastungen`}`
}

const moveName = ({ kind, move, moveCounts }: Gist): string =>
  kind !== 'jumps' ? moves(move) : moveCounts === undefined ? 'Jumps' : `Jumps auf ${numberWords(moveCounts)}`

function work(gist: Gist, isFinish: boolean, ahead: boolean): string[] {
  const { kind, count, others, effort } = gist
  const long = lengths(gist)
  const hard = sayEffort(effort)
  const song = ahead ? 'Nächster Song' : 'Dieser Song'
  const what = phraseOf(gist)
  const last = isFinish
    ? [`Letzter großer Song: ${what}, ${long}, ${hard}.`, `Dafür haben wir die Beine gespart. ${capital(what)}, ${long}.`]
    : []
  if (kind === 'jumps' || kind === 'move') {
    const name = moveName(gist)
    return [
      ...last,
      `${ahead ? 'Gleich' : 'Jetzt'} kommen ${name} dazu. Langsam und sauber, ${long}.`,
      `${song}: ${name} sind dabei. Wir fangen langsam an.`,
      `${song}: ${what}. ${capital(long)}, höchstens ${hard}.`,
    ]
  }
  const many = others === 0 && count > 1
  const stands = kind === 'tallClimb' || kind === 'run'
  const we = kind === 'tallClimb' ? 'wir klettern' : 'wir laufen'
  return [
    ...last,
    `${song}: ${what}, ${long}, ${hard}.`,
    `${capital(what)} ${ahead ? 'im nächsten Song' : 'in diesem Song'}, ${long}, ${hard}.`,
    `${ahead ? 'Gleich kommt' : 'Der Plan'}: ${what}, ${long}.`,
    ...(many ? [`${song} bringt ${what}. ${capital(long)}, ${hard}.`] : []),
    ...(stands && many
      ? [
          `${song}: ${we}. ${capital(sayTimes(count))} aus dem Sattel, ${long}, ${hard}.`,
          `${song}: ${we}. Wir stehen ${sayTimes(count)} auf, ${long}.`,
        ]
      : []),
  ]
}

const short = (gist: Gist, ahead: boolean): string[] => {
  const name = gist.kind === 'jumps' || gist.kind === 'move' ? moveName(gist) : phraseOf({ ...gist, others: 0 })
  return ahead ? [`Gleich: ${name}.`, `Macht euch bereit: ${name}.`] : [`${capital(name)} in diesem Song.`]
}

const QUIET: Readonly<Record<Parameters<Voice['previews']['quiet']>[0], Readonly<Record<'ahead' | 'now', readonly string[]>>>> = {
  coolDown: {
    ahead: [
      'Das war die letzte Arbeit. Gleich rollen wir aus.',
      'Die Arbeit ist geschafft. Noch ein lockerer Song nach Hause.',
      'Die Arbeit liegt hinter euch. Der nächste Song ist nur für die Beine.',
    ],
    now: [
      'Der hier bringt uns nach Hause. Lasst die Beine rollen.',
      'Die Arbeit ist geschafft. Rollt mit mir aus.',
      'Letzter Song. Alles darf runterkommen.',
      'Die Arbeit liegt hinter euch. Ab hier locker.',
    ],
  },
  recovery: {
    ahead: [
      'Der nächste Song gehört euch. Lockere Beine, ruhiger Atem.',
      'Gleich ein ganzer lockerer Song. Verdient.',
      'Im nächsten Song darf alles runterkommen.',
    ],
    now: [
      'Dieser Song gehört euch. Atmen und sammeln.',
      'In dem hier müsst ihr nichts jagen. Lockere Beine.',
      'Nutzt diesen Song, um zu Atem zu kommen.',
    ],
  },
  warmUp: {
    ahead: [
      'Noch ein Song zum Aufwärmen, jedes Mal ein bisschen mehr.',
      'Im nächsten Song bauen wir ein wenig auf.',
      'Wir wärmen uns noch auf. Der nächste legt etwas drauf.',
    ],
    now: [
      'Hier wärmen wir uns auf, jedes Mal ein bisschen mehr.',
      'Dieser Song weckt die Beine.',
      'Mit jedem Schritt in diesem Song ein bisschen mehr.',
    ],
  },
  climb: {
    ahead: [
      'Gleich ein Berg im Sitzen. Einer, ganz gleichmäßig.',
      'Im nächsten Song klettern wir im Sattel.',
      'Gleich der Berg. Wir bleiben im Sattel.',
    ],
    now: [
      'Dieser Song ist ein langer Berg, im Sattel.',
      'An diesem Berg bleiben wir sitzen.',
      'Ein Berg, vom Anfang bis zum Ende des Songs.',
    ],
  },
  steady: {
    ahead: [
      'Der nächste Song ist gleichmäßig. Ein Tempo, eine Straße.',
      'Gleich eine ruhige, gleichmäßige Straße.',
      'Gleich gleichmäßiges Fahren, alles im Sattel.',
    ],
    now: [
      'Der hier ist gleichmäßig. Findet euer Tempo.',
      'Eine Straße, ein Tempo, in diesem Song.',
      'Gleichmäßiger Song. Ankommen und fahren.',
    ],
  },
}

export const previews: Voice['previews'] = {
  work,
  short,
  quiet: (kind, ahead) => QUIET[kind][ahead ? 'ahead' : 'now'],
  ofRounds: (text) => text.replace(/^Nächster Song(?::| bringt)/, 'Gleich kommt:'),
}
