import type { en } from '#words/en/index.ts'
import { plural, setting } from '#words/forms.ts'

const problem: typeof en.typedLine.problem = (of) => {
  switch (of.kind) {
    case 'unknown':
      return `„${of.word}“ kennt diese Zeile nicht.`
    case 'twice':
      return `„${of.word}“ sagt etwas, was schon in der Zeile steht.`
    case 'needsNumber':
      return `Nach „${of.word}“ fehlt eine Zahl.`
    case 'noKind':
      return 'Welche Art Block? Flach, Berg, Jumps, Push, Erholung.'
    case 'howLong':
      return `„${of.word}“ wovon? Hier gibt es keinen Beat: 45s oder 1:30 tippen.`
    case 'onOrOff':
      return `„${of.word}“: drauf oder raus?`
    case 'needsMove':
      return `„${of.word}“ braucht eine Bewegung, etwa Jumps.`
    case 'tooLong':
      return 'Diese Zeile ist zu lang. Fang eine neue an.'
    case 'effortOutside':
      return `„${of.word}“: Belastung geht von 0 bis 10.`
    case 'rpmOutside':
      return `„${of.word}“ ist keine Trittfrequenz, die jemand fährt.`
    case 'countsOutside':
      return `„${of.word}“ sind zu viele oder zu wenige Counts für eine Bewegung.`
    case 'lengthOutside':
      return `„${of.word}“ ist zu lang oder zu kurz für einen Block.`
    case 'roundsOutside':
      return `„${of.word}“: Ein Satz hat 1 bis 100 Runden.`
    case 'noSuchStep':
      return `„${of.word}“ gibt es auf diesem Rad nicht, ${setting(of.low, of.stepsPerUnit)} und ${setting(of.high, of.stepsPerUnit)} schon.`
    case 'partOfCount':
      return `„${of.word}“ endet zwischen zwei Counts.`
  }
}

export const typedLine: typeof en.typedLine = {
  type: 'Block tippen',
  typeDo: 'hinter diesem einen Block tippen',
  edit: 'als Zeile bearbeiten',
  editDo: 'den Block als Zeile zeigen und dort ändern',
  newLine: 'neuer Block',
  editLine: ({ name }) => `„${name}“ als Zeile`,
  placeholder: 'sitzend Berg 8 bis 2 Belastung 7',
  problem,
  ofLine: ({ line, text }) => `Zeile ${line}: ${text}`,
  take: ({ blocks }) => `${plural(blocks, 'Block', 'Blöcke')} dazunehmen`,
  change: 'Block ändern',
  close: 'schließen',
  left: 'Was die Zeile nicht sagt, etwa Ansagen und Notizen, bleibt, wie es ist.',
  cuesElsewhere: 'Ansagen eines Blocks, den es schon gibt, stehen in seinen Details.',
  addPattern: ({ name }) => `${name} hinzufügen`,
  suggestions: 'Bausteine, und Wörter zum Ergänzen',
  help: 'was man tippen kann',
  keys: 'Tipp den Anfang eines Bausteins, auch eines eigenen, und nimm ihn mit Enter dazu. Enter nimmt, was in der Zeile steht, und öffnet die nächste, Tab ergänzt ein Wort, Escape schließt. Zwischen mehrere Blöcke einer Zeile kommt ein Schrägstrich; mehrere Zeilen lassen sich einfügen.',
  examples: [
    { line: 'sitzend Berg 8 bis 2½ Belastung 7 breit', means: '8 Achter, Widerstand 2½, Belastung 7, Hände breit' },
    { line: 'Jumps auf 4 x8, plus halbe', means: 'acht Jumps auf je 4 Counts, eine halbe Umdrehung mehr' },
    { line: 'flach 16 Belastung 4 bis 6', means: '16 Achter, Belastung steigt von 4 auf 6' },
    { line: 'Push 20s, eine Umdrehung drauf', means: '20 Sekunden' },
    { line: 'Pause 4 trinken, eine Umdrehung raus', means: '4 Achter locker, mit einem Schluck' },
    { line: 'Berg 8 „Hoch damit.“ „Hüfte nach hinten.“', means: 'vor dem Berg gesagt, dann darin' },
    { line: 'Berg 8 / Pause 4 / Berg 12 Belastung 8', means: 'drei Blöcke' },
    { line: '4 Runden: Push 4 Belastung 9 / Pause 4', means: 'ein Satz' },
  ],
}
