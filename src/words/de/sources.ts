import type { en } from '#words/en/index.ts'

export const sources: typeof en.sources = {
  commonPractice: 'Allgemeine Praxis, ohne Quelle.',
  arithmetic: 'Aus dem Plan gerechnet.',
  resistanceNeeded:
    'Öffentliches Positionspapier einer Ausbildungsorganisation für Trainer: Widerstand vor Stehen und Sprinten. Die Menge ist allgemeine Praxis.',
  neverNoResistance: 'Öffentliches Positionspapier einer Ausbildungsorganisation für Trainer: Wenig Widerstand ist nie gar keiner.',
  resistanceFirst: 'Öffentliches Positionspapier einer Ausbildungsorganisation für Trainer; allgemeine Praxis.',
  cadenceBounds: 'Öffentliches Positionspapier einer Ausbildungsorganisation für Trainer; Studios unterscheiden sich.',
  groupTeaching: 'Lehre des Gruppentrainings; allgemeine Praxis.',
  ridersAsk: 'Allgemeine Praxis: Wie lange, wie viele und wie hart ist das, was Fahrer wissen wollen.',
  warmUp: 'Allgemeine Praxis; ACSM’s Complete Guide to Fitness & Health: mindestens 5–10 Minuten Aufwärmen.',
  workToRest:
    'NSCA, Essentials of Strength Training and Conditioning, 4. Aufl., Tabelle zu Belastung und Pause (Zeiten und Verhältnisse in einer öffentlichen Kopie gesehen).',
  noise: 'NIOSH 98-126 (85 dB für 8 Stunden, je 3 dB mehr die halbe Zeit); Pegel: Beach & Nie 2014.',
  firstClass: 'Brogan und andere 2017, Am J Med 130:484–487: Muskelzerfall nach einer ersten Stunde.',
  criticalPower:
    'Modell der kritischen Leistung mit drei veröffentlichten Erholungen (Skiba et al., Med Sci Sports Exerc 2012 und Eur J Appl Physiol 2015; Ferguson et al., J Appl Physiol 2010). Eine Schätzung für einen gedachten Fahrer.',
  avoidedMoves: 'Die Liste gemiedener Bewegungen dieses Rides.',
}
