import type { en } from '#words/en/index.ts'
import { plural } from '#words/forms.ts'

export const undoList: typeof en.undoList = {
  changes: 'Änderungen',
  changesDo: 'alle Änderungen auflisten und zu jeder davon zurück oder vor gehen',
  undone: 'rückgängig gemachte Änderungen',
  made: 'gemachte Änderungen',
  now: 'Hier steht der Ride jetzt.',
  opened: 'wie beim Öffnen',
  notFetched: 'Die Liste der Änderungen konnte nicht geladen werden. Versuch es online noch einmal.',
  undid: ({ count }) => `${plural(count, 'Änderung', 'Änderungen')} rückgängig gemacht`,
  redid: ({ count }) => `${plural(count, 'Änderung', 'Änderungen')} wiederholt`,
}
