import type { en } from '#words/en/index.ts'
import { and, duration, number, percent, plural } from '#words/forms.ts'

const gap = (seconds: number): string =>
  seconds === 0 ? 'ohne Pause' : seconds < 0 ? `${number(-seconds, 1)} s Crossfade` : `${number(seconds, 1)} s Pause`

export const prepare: typeof en.prepare = {
  music: 'Musik',
  room: 'Raum',
  camera: 'Kamera und Ton',
  riders: 'Fahrer',
  yourself: 'du selbst',

  playlist: ({ songs }) => `Playlist in Reihenfolge, ${plural(songs, 'Song', 'Songs')}`,
  oneSong: ({ title }) => `„${title}“`,
  firstLast: ({ first, last }) => `zuerst „${first}“, zuletzt „${last}“`,
  crossfadeOff: 'Crossfade aus',
  crossfadeOffGap: ({ seconds }) => `Crossfade aus, ${gap(seconds)} zwischen den Songs`,
  playerSetTo: ({ seconds }) => `Player auf ${gap(seconds)} gestellt`,
  otherGaps: ({ gaps }) =>
    [...gaps.map(({ seconds, place }) => `${gap(seconds)} vor Song ${place}`), 'alle Zeiten rechnen damit'].join(
      gaps.length > 0 ? '; ' : '',
    ),
  shuffleOff: 'Zufallswiedergabe und Wiederholen aus',
  offline: 'jeder Song heruntergeladen und kurz angespielt; Flugmodus an, Mitteilungen aus',
  unclean: 'Texte, die vielleicht nicht in den Raum passen',
  titles: ({ titles }) => and(titles.map((title) => `„${title}“`)),
  spare: 'zweiter Player oder zweites Handy mit derselben Playlist, Kabel und Ladegerät',
  noMusicPage: 'Notfallseite gedruckt, falls die Musik ausfällt',

  mic: 'Mikrofon und Ersatzbatterie',
  mics: 'Mikrofon und Ersatzbatterie, eins für jeden von euch oder eine abgesprochene Übergabe',
  soundLevel: 'Lautstärke in der letzten Reihe geprüft; am besten höchstens 85 dB(A)',
  soundDose: ({ measured, share, shareAt85, week }) =>
    `bei üblichen ${number(measured, 1)} dB(A) braucht diese Stunde ${percent(share)} des unbedenklichen Tageslärms, bei 85 dB(A) ${percent(shareAt85)} (NIOSH 98-126), und ${percent(week)} einer Hörwoche (WHO-ITU H.870); die Vorschriften sind von Land zu Land verschieden`,
  air: 'Lüfter, Türen und Licht, wie der Raum es hergibt; Uhr im Blick',
  bikes: 'dein eigenes Rad eingestellt; defekte markiert',
  picture: 'Kamera sieht Knopf, Füße und Schultern; Licht von vorn',
  voice: 'Stimme über der Musik auf einem zweiten Gerät mit Kopfhörern gehört',
  line: 'Kabel statt WLAN; alles andere im Netz abgeschaltet',
  opening: 'Begrüßungskarte zur Hand',
  toSay: ({ seconds }) => `${duration(seconds)} zu sprechen`,

  brake: 'Bremse gezeigt: Knopf drücken stoppt das Rad; kein Rollenlassen',
  briefing: ({ seconds }) => `${duration(seconds)} eingeplant`,
  noBriefing: 'dafür ist keine Zeit eingeplant: mach es vor Beginn der Stunde',
  firstTimers:
    'Neue begrüßt: Rad eingestellt, Grundwiderstand gefunden, „dein eigener Ride“, nach Verletzungen und Schwangerschaft gefragt',
  firstTimersAtHome:
    'Worte für Neue bereit: Rad nach Anleitung einstellen, Grundwiderstand finden, „dein eigener Ride“, im Zweifel vorher ärztlichen Rat holen',
  water: 'Wasser und Handtuch an jedem Rad',
  waterAtHome: 'gesagt, dass Wasser und Handtuch in Reichweite liegen sollen',
  drinks: ({ first, count }) => `erstes Trinken bei ${duration(first)}, ${count} geplant`,
  noDrinks: ({ seconds }) => `in ${duration(seconds)} ist kein Trinken geplant`,

  sheet: 'Spickzettel am Rad; prüfe, ob du ihn bei Stundenlicht lesen kannst',
  team: 'Übergaben abgesprochen',
  names: ({ names }) => and(names),
  self: 'Wasser, Handtuch, Schuhe; warm genug zum Sprechen und Fahren',
}
