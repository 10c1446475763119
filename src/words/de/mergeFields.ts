import type { en } from '#words/en/index.ts'
import { and, clock, duration, effort, number, plural, setting, signedSetting } from '#words/forms.ts'
import { measures } from './measures.ts'

const FIELDS: Readonly<Record<Parameters<typeof en.mergeFields.field>[0]['field'], string>> = {
  'ride title': 'Titel',
  'ride language': 'Sprache der Ansagen',
  'ride aim': 'Ziel',
  'ride level': 'Niveau',
  'ride slotMinutes': 'Stundenlänge',
  'ride startsAt': 'Beginn',
  'ride briefingSeconds': 'Begrüßung',
  'ride clearUpSeconds': 'Abwischen',
  'ride datum': 'Widerstand zählt ab',
  'ride bike': 'Rad',
  'ride room': 'Art des Raums',
  'ride location': 'Raum',
  'ride leaders': 'Trainer',
  'ride leader.name': 'Trainer',
  'ride leader.wordsPerMinute': 'Wörter pro Minute',
  'ride avoidMoves': 'Moves zum Weglassen',
  'ride standIn.room': 'für die Vertretung: der Raum',
  'ride standIn.regulars': 'für die Vertretung: was Stammgäste erwarten',
  'ride standIn.mustDo': 'für die Vertretung: was sein muss',
  'ride standIn.mustNot': 'für die Vertretung: was nicht sein darf',
  'ride privateNotes': 'private Notizen',

  'section title': 'Name',
  'section leadInSeconds': 'Vorlauf',
  'section lead': 'erster Fuß',
  'section ridden': 'gespielter Ausschnitt',
  'section song': 'Song',
  'section song.title': 'Song',
  'section song.artist': 'Interpret',
  'section song.grid': 'Tempo',
  'section song.lengthSeconds': 'Songlänge',
  'section song.strikesPerBeat': 'Tritte pro Beat',
  'section song.marks': 'Marken im Song',
  'section song.quiet': 'Stellen ohne Ansage',
  'section song.clean': 'jugendfreier Text',
  'section song.fingerprint': 'Musikdatei',
  'section notes': 'Notizen',

  'set label': 'Name',
  'set rounds': 'Runden',
  'set perRound': 'mehr pro Runde',

  'block label': 'Name',
  'block terrain': 'Art des Blocks',
  'block length': 'Länge',
  'block posture': 'Haltung',
  'block hands': 'Hände',
  'block resistance': 'Widerstand',
  'block ownTotal': 'eigener Widerstand des Trainers',
  'block cadence': 'Trittfrequenz',
  'block strikesPerBeat': 'Tritte pro Beat',
  'block effort': 'Belastung',
  'block lead': 'Startfuß',
  'block move': 'Move',
  'block allOut': 'volle Belastung',
  'block water': 'Wasser',
  'block walk': 'Gang durch den Raum',
  'block easier': 'leichtere Variante',
  'block harder': 'schwerere Variante',
  'block feel': 'Gefühl',
  'block leader': 'Trainer',
  'block mic': 'am Mikrofon',
  'block locked': 'gesperrt',
  'block eights': 'wenigste und meiste Achter',
  'block notes': 'Notizen',

  'cue moment': 'Zeitpunkt',
  'cue lead': 'Vorlauf',
  'cue text': 'Wortlaut',
  'cue count': 'Einzählen',
}

const DATUMS = { base: 'dem Grundwiderstand', loose: 'dem losen Rad' }

const ROOMS = { studio: 'Studio', online: 'online' }

const MOMENTS = {
  preview: 'Vorschau',
  announce: 'Ankündigung',
  countIn: 'Einzählen',
  action: 'Aktion',
  form: 'Technikhinweis',
  story: 'Geschichte',
}

const LEAD_FEET = { keep: 'gleicher Fuß', swap: 'anderer Fuß', left: 'links', right: 'rechts' }

const CALIBRATIONS = { watts: 'nach Watt kalibriert', feel: 'nach Gefühl kalibriert' }

type Call = Parameters<typeof en.mergeFields.resistance>[0]['call']

const callAlone = (call: Call, perUnit: number): string => {
  switch (call.kind) {
    case 'keep':
      return 'bleiben'
    case 'allOff':
      return 'alles raus'
    case 'total':
      return `auf ${measures.settingRange(call, perUnit)}`
    case 'byFeel':
      return `auf ${measures.settingRange(call, perUnit)} nach Gefühl`
    case 'change': {
      const change = call.steps === 0 ? 'bleiben' : signedSetting(call.steps, perUnit)
      return call.mode === 'exact' ? change : `${change} ${call.mode === 'atLeast' ? 'oder mehr' : 'wenn es geht'}`
    }
  }
}

export const mergeFields: typeof en.mergeFields = {
  field: ({ field }) => FIELDS[field],
  rule: ({ name }) => `Studioregel „${name}“`,
  rider: 'Fahrer',

  none: 'nichts',
  changed: 'geändert',
  yes: ({ yes }) => (yes ? 'ja' : 'nein'),
  minutes: ({ minutes }) => `${number(minutes)} min`,
  datum: ({ datum }) => DATUMS[datum],
  room: ({ room }) => ROOMS[room],
  bike: ({ name, calibration, fitted }) => {
    const known = [...(calibration ? [CALIBRATIONS[calibration]] : []), ...(fitted ? ['Bremse angepasst'] : [])]
    return known.length === 0 ? name : `${name} (${known.join(', ')})`
  },
  ruleValue: ({ value, unit }) => `${number(value, 3)}${unit === '' ? '' : ` ${unit}`}`,

  ridden: ({ from, to }) => (to === undefined ? `ab Zählzeit ${number(from)}` : `Zählzeit ${number(from)} bis ${number(to)}`),
  noSong: 'kein Song',
  song: ({ title, seconds, bpm }) => [title, clock(seconds), ...(bpm === undefined ? [] : [measures.bpm(bpm, 2)])].join(', '),
  grid: ({ bpm, beats, firstBeat, odd }) =>
    [measures.bpm(bpm, 2), `${number(beats)} Beats pro Takt`, `erster Beat bei ${number(firstBeat, 3)} s`, ...odd].join(', '),
  places: ({ places, more, unit }) =>
    `bei den ${unit === 6 ? 'Sechsern' : 'Achtern'} ${places.join(', ')}${more > 0 ? ` und ${number(more)} weiteren` : ''}`,
  fingerprint: ({ print }) => `gehört in der Datei ${print}`,
  strikes: ({ strikes }) => {
    if (strikes === null) return 'neben dem Beat'
    if (strikes === 0.5) return '½, halbes Tempo'
    return strikes === 1 ? '1, auf dem Beat' : '2, doppeltes Tempo'
  },

  rounds: ({ rounds }) => plural(rounds, 'Runde', 'Runden'),
  perRound: ({ steps, perUnit }) => `${signedSetting(steps, perUnit)} pro Runde`,
  resistance: ({ call, aim, checkpoint, perUnit }) =>
    [
      callAlone(call, perUnit),
      ...(aim === undefined ? [] : [`Ziel ${setting(aim, perUnit)}`]),
      ...(checkpoint ? [`jetzt bei ${measures.settingRange(checkpoint, perUnit)}`] : []),
    ].join(', '),
  legsStill: 'Beine still',
  cadence: ({ from, to }) => (from === to ? measures.rpm(from, 2) : `${number(from)} bis ${measures.rpm(to, 2)}`),
  effort: ({ from, to }) => (from === to ? effort(from) : `${effort(from)} bis ${effort(to)}`),
  leadFoot: ({ lead }) => LEAD_FEET[lead],
  move: ({ name, counts, side, alternates }) =>
    `${name} auf ${number(counts)}${side === undefined ? '' : `, ${LEAD_FEET[side]}${alternates ? ' zuerst' : ''}`}`,
  eights: ({ least, most }) =>
    and([...(least === undefined ? [] : [`mindestens ${number(least)}`]), ...(most === undefined ? [] : [`höchstens ${number(most)}`])]),

  moment: ({ moment }) => MOMENTS[moment],
  counts: ({ counts }) => plural(counts, 'Zählzeit', 'Zählzeiten'),
  seconds: ({ seconds }) => duration(seconds),
  countIn: ({ count }) => `Einzählen auf ${number(count)}`,
}
