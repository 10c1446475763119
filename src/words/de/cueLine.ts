import type { en } from '#words/en/index.ts'
import { clock, plural } from '#words/forms.ts'

type Lead = { counts: number } | { seconds: number }

const length = (lead: Lead) =>
  'counts' in lead ? plural(lead.counts, 'Zählzeit', 'Zählzeiten') : plural(lead.seconds, 'Sekunde', 'Sekunden')

const spot: typeof en.cueLine.spot = ({ name, lead }) => {
  switch (name) {
    case 'preview':
      return `Vorschau, ${length(lead)} davor`
    case 'before':
    case 'beforeChange':
      return `${length(lead)} davor`
    case 'countIn':
      return 'Einzählen'
    case 'change':
      return 'auf den Wechsel'
    case 'start':
      return 'am Anfang'
    case 'middle':
      return 'in der Mitte'
    case 'lastTwo':
      return 'counts' in lead && lead.counts === 12 ? 'zu den letzten zwei Sechsern' : 'zu den letzten zwei Achtern'
    case 'lastOne':
      if ('seconds' in lead) return `zu den letzten ${lead.seconds} Sekunden`
      return lead.counts === 6 ? 'zum letzten Sechser' : 'zum letzten Achter'
    case 'end':
      return 'am Ende'
    case 'beforeEnd':
      return `${length(lead)} vor dem Ende`
  }
}

export const cueLine: typeof en.cueLine = {
  write: 'Ansage schreiben',
  writeDo: 'schreiben, was du bei diesem Block sagst, und weiter zum nächsten',
  field: ({ name, moment }) => `Ansage für „${name}“, ${moment}`,
  spot,
  at: ({ at }) => `bei ${clock(at)}`,
  placeholder: 'was du sagst',
  earlier: 'früherer Moment',
  later: 'späterer Moment',
  blockBefore: 'voriger Block',
  blockAfter: 'nächster Block',
  add: 'Ansage hinzufügen',
  change: 'Ansage ändern',
  remove: 'Ansage entfernen',
  close: 'schließen',
  suggestions: 'was du hier sagen könntest',
  countIn: ({ counts }) => `${counts} einzählen`,
  help: 'Tasten',
  keyKeep: 'Ansage behalten und weiter zum nächsten freien Moment',
  keyChoose: 'einen Vorschlag wählen, Enter behält ihn',
  keyFill: 'den gewählten Vorschlag zum Bearbeiten in die Zeile holen',
  keyMoment: 'früherer oder späterer Moment; gerade Getipptes kommt mit',
  keyMove: 'die Ansage, die da steht, früher oder später legen',
  keyBlock: 'Ansage behalten und zum vorigen oder nächsten Block',
  keyDrop: 'Getipptes verwerfen und die Zeile schließen',
  keys: 'eine Ansage schreiben',

  changed: ({ text }) => `Ansage geändert: „${text}“`,
  moved: ({ text }) => `Ansage „${text}“ verschoben`,
  movedCountIn: 'Einzählen verschoben',
  removed: ({ text }) => `Ansage „${text}“ entfernt`,
  removedCountIn: 'Einzählen entfernt',
  addedCountIn: 'Einzählen hinzugefügt',
}
