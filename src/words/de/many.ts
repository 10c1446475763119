import type { en } from '#words/en/index.ts'
import { number, plural } from '#words/forms.ts'

export const many: typeof en.many = {
  alike: 'alle wie diesen auswählen',
  alikeDo: 'alle Blöcke mit diesem Terrain, dieser Haltung und diesem Move auswählen',
  alikeSelected: ({ count, name }) => `${plural(count, 'Block', 'Blöcke')} wie ${name} ausgewählt`,
  noneAlike: 'Kein anderer Block ist wie dieser.',

  shiftEarlier: 'einen Achter früher',
  shiftLater: 'einen Achter später',
  shiftDo: 'die Auswahl einen Achter früher, später; die Blöcke daneben machen Platz',
  shiftedEarlier: ({ name, counted }) => `${name} ${counted ? 'einen Achter' : '5 Sekunden'} früher gelegt`,
  shiftedLater: ({ name, counted }) => `${name} ${counted ? 'einen Achter' : '5 Sekunden'} später gelegt`,
  shiftApart: 'Verschieben geht nur mit Blöcken, die in einem Song nebeneinander stehen.',
  shiftNothingBefore: 'Davor steht in diesem Song kein Block, der Zeit tauschen kann.',
  shiftNothingAfter: 'Danach steht in diesem Song kein Block, der Zeit tauschen kann.',
  shiftSet: ({ name }) => `„${name}“ daneben ist ein Satz, und seine Runden behalten ihre Länge.`,
  shiftNoRoom: ({ name }) => `„${name}“ ist zu kurz, um einen Achter abzugeben.`,

  fill: 'Song füllen',
  fillDo: 'den Song bis zum Ende füllen: ein Block wird länger, ein Satz bekommt mehr Runden, mehrere wiederholen sich reihum',
  filled: ({ name }) => `Song mit ${name} gefüllt`,
  fillApart: 'Füllen geht nur mit Blöcken, die in einem Song nebeneinander stehen.',
  fillNoSong: 'Hier ist kein Song, der sich füllen lässt.',
  fillFull: 'Der Song ist schon voll.',
  fillNoRound: 'Für eine weitere Runde ist kein Platz mehr.',

  nextRegion: 'nächster Bereich',
  regionBefore: 'voriger Bereich',
  regionDo: 'Bühne, Details, Bausteine, Prüfung: nächster, voriger Bereich',
  goOut: 'eine Ebene hinaus',
  goOutDo: 'eine Ebene hinaus: vom Block zum Song, vom Song zu nichts',

  appliesTo: 'gilt für',
  everyRound: ({ rounds }) => (rounds === 2 ? 'beide Runden' : `alle ${number(rounds)} Runden`),
  onlyRound: ({ round }) => `nur Runde ${number(round)}`,
  onlyRoundNote: 'Eine einzelne Runde wird aus dem Satz genommen, damit du sie allein ändern kannst.',
  thisRound: 'nur diese Runde',
  thisRoundDo: 'diese Runde aus ihrem Satz nehmen, um sie allein zu ändern',
  singledOut: ({ round, name }) => `Runde ${number(round)} aus ${name} herausgenommen`,

  startAndEnd: 'Anfang und Ende',
  oneLevel: 'eine Stufe',
  withSong: 'mit Song',
  half: 'halb',
  one: 'im Beat',
  two: 'doppelt',
}
