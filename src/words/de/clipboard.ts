import type { en } from '#words/en/index.ts'
import { number, plural } from '#words/forms.ts'

export const clipboard: typeof en.clipboard = {
  group: 'Kopieren und Einfügen',
  copy: 'kopieren',
  copyDo: 'die Auswahl kopieren',
  cut: 'ausschneiden',
  cutDo: 'die Auswahl ausschneiden',
  paste: 'einfügen',
  pasteDo: 'hinter der Auswahl einfügen, auch aus einem anderen Ride oder Fenster',
  pasteOnly: 'nur … einfügen',
  pasteOnlyDo: 'nur die Blöcke, die Ansagen oder den Widerstand einfügen',
  onlyBlocks: 'nur die Blöcke in diesen Song einfügen',
  onlyBlocksDo: 'die Blöcke dieses Songs durch die kopierten ersetzen',
  onlyCues: 'nur die Ansagen einfügen',
  onlyCuesDo: 'die Ansagen Block für Block durch die kopierten ersetzen',
  onlyResistance: 'nur den Widerstand einfügen',
  onlyResistanceDo: 'den Widerstand Block für Block durch den kopierten ersetzen',
  selectAll: 'alles auswählen',
  selectAllDo: 'alle Blöcke des Songs auswählen; noch einmal: die des Rides',
  menu: 'Menü',
  menuDo: 'das Menü öffnen: was hier möglich ist',
  menuOf: ({ name }) => `Menü für ${name}`,
  menuOfRide: 'Menü für den Ride',
  menuButton: 'mehr …',
  copyCue: ({ place }) => `Ansage ${number(place)} kopieren`,

  copied: ({ name }) => `${name} kopiert`,
  cutDone: ({ name }) => `${name} ausgeschnitten`,
  pasted: ({ name, where }) => `${name} in ${where} eingefügt`,
  pastedSongs: ({ name }) => `${name} eingefügt`,
  replacedBlocks: ({ where, count }) => `Blöcke von ${where} durch ${plural(count, 'Kopie', 'Kopien')} ersetzt`,
  pastedCues: ({ name }) => `Ansagen in ${name} eingefügt`,
  replacedCues: ({ name }) => `Ansagen von ${name} ersetzt`,
  pastedResistance: ({ name }) => `Widerstand in ${name} eingefügt`,

  rounded: ({ unit }) => `Der Widerstand ist auf die Schritte des Bikes dieses Rides gerundet (${unit}).`,
  byLoad: ({ unit }) => `Der Widerstand ist nach Last auf das Bike dieses Rides umgerechnet (${unit}).`,
  toSeconds: 'Die Längen sind jetzt in Sekunden: Dieser Song hat kein Tempo.',
  toEights: 'Die Längen sind jetzt in ganzen Achtern dieses Songs.',
  leftOver: ({ done, of }) =>
    `${number(done)} von ${plural(of, 'kopierten Block', 'kopierten Blöcken')} eingefügt; für mehr waren keine Blöcke da.`,
  notBlocks: ({ text, more }) =>
    more === 0 ? `„${text}“ nennt keinen Block.` : `„${text}“ und ${plural(more, 'weitere Zeile', 'weitere Zeilen')} nennen keinen Block.`,

  nothing: 'In der Zwischenablage ist nichts, was in einen Ride passt. Zeilen wie „Berg 8 Belastung 7“ lassen sich einfügen.',
  noRoom: 'Das passt nicht: Es wäre mehr, als ein Ride fasst, oder ein Satz in einem Satz.',
  damaged: 'Der Inhalt der Zwischenablage lässt sich nicht als Teil eines Rides lesen.',
  tooNew: 'Das wurde mit einer neueren Version dieser Seite kopiert. Lade dieses Fenster neu und versuch es noch einmal.',
  needsBlock: 'Wähle den Block, zu dem diese Ansagen gehören, und füge dann ein.',
  needsSong: 'Wähle einen Song oder einen seiner Blöcke und füge dann ein.',
  holdsCues: 'Es wurden nur Ansagen kopiert. Wähle einen Block und füge sie dort ein.',
  notRead: ({ keys }) => `Dieser Browser lässt die Seite die Zwischenablage nicht lesen. Füge mit ${keys} ein.`,
  onlyHere: ({ keys }) =>
    `Nur für dieses Fenster kopiert, weil dieser Browser die Seite nicht kopieren lässt. Für andere Fenster kopiere mit ${keys}.`,
}
