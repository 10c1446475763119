import type { en } from '#words/en/index.ts'
import { and, capitalized, clock, duration, effort, number, percent } from '#words/forms.ts'
import { measures } from './measures.ts'

const CLASSES = { beginner: 'Stunden für Einsteiger', mixed: 'gemischte Stunden', advanced: 'Stunden für Fortgeschrittene' }

const IN_CLASSES = { beginner: 'in Stunden für Einsteiger', mixed: 'in gemischten Stunden', advanced: 'in Stunden für Fortgeschrittene' }

const SIDES = { left: 'links', right: 'rechts' }

const FOOT = { left: 'linken', right: 'rechten' }

const timeOn = (seconds: number): string => (seconds < 0.5 ? 'keine Zeit' : duration(seconds))

const mic = (voice: boolean): string => (voice ? 'übernimmt das Mikrofon' : 'übernimmt')

export const checksRide: typeof en.checksRide = {
  noSections: 'Dieser Ride hat noch keine Songs.',
  noBlocks: ({ song }) => `${capitalized(song)} hat noch keine Blöcke.`,

  slotOverrun: ({ over, length }) => `Der Ride ist ${duration(over)} länger als die Stundenlänge von ${duration(length)}.`,
  slotUnused: ({ left }) => `${duration(left)} der Stunde sind noch leer.`,

  nothingRidden: ({ song }) => `Zwischen Startpunkt und Endpunkt bleibt von ${song} nichts übrig.`,
  outPastSong: ({ song, counts, unit }) => `Der Endpunkt von ${song} liegt ${measures.eights(counts, unit)} hinter dem Ende der Musik.`,
  endAtLastEight: 'mit dem letzten ganzen Achter des Songs enden',
  endedAtLastEight: 'Endpunkt auf den letzten ganzen Achter des Songs gelegt',
  openTail: ({ song, tail }) => `Das Ende von ${song} ist nicht geplant: ${tail}.`,
  beyondOut: ({ song, by }) => `Die Blöcke von ${song} reichen über den Endpunkt hinaus: ${by}.`,
  beyondEnd: ({ song, by }) => `Die Blöcke von ${song} reichen über das Ende hinaus: ${by}.`,
  endWithLastBlock: 'Song mit dem letzten Block enden lassen',
  endedWithLastBlock: 'Endpunkt ans Ende des letzten Blocks gelegt',
  leaveOut: ({ block }) => `${block} weglassen`,
  leftOut: ({ block }) => `${block} weggelassen`,
  leaveOutRound: 'letzte Runde weglassen',
  leftOutRound: 'Letzte Runde weggelassen',
  deepCrossfade: ({ song, before, seconds }) =>
    `Die Überblendung zu ${song} nimmt ${before} ${duration(seconds)}, mehr als den letzten Block.`,
  shortenCrossfade: ({ seconds }) => `Überblendung auf ${duration(seconds)} kürzen`,
  shortenedCrossfade: ({ seconds }) => `Überblendung auf ${duration(seconds)} gekürzt`,
  crookedBlock: ({ block, counts, unit }) =>
    `${block} dauert ${measures.eights(counts, unit)}, keine ganzen ${unit === 6 ? 'Sechser' : 'Achter'}.`,
  makeLength: ({ counts, unit }) => `auf ${measures.eights(counts, unit)} bringen`,
  madeLength: ({ block, counts, unit }) => `${block} auf ${measures.eights(counts, unit)} gebracht`,
  snapSong: ({ unit }) => `alle Blöcke des Songs auf ${unit === 6 ? 'Sechser' : 'Achter'} rücken`,
  snappedSong: ({ unit }) => `Alle Blöcke des Songs auf ${unit === 6 ? 'Sechser' : 'Achter'} gerückt`,

  noWarmUp: ({ need }) => `Es gibt kein Aufwärmen; ${duration(need)} sind für diese Stunde üblich.`,
  shortWarmUp: ({ have, need }) => `Das Aufwärmen dauert ${duration(have)}; ${duration(need)} sind für diese Stunde üblich.`,
  noCoolDown: ({ need }) => `Es gibt kein Ausfahren; ${duration(need)} sind für diese Stunde üblich.`,
  shortCoolDown: ({ have, need }) => `Das Ausfahren dauert ${duration(have)}; ${duration(need)} sind für diese Stunde üblich.`,
  workShare: ({ share, from, level, most }) =>
    `${percent(share)} der Fahrzeit liegen bei Belastung ${effort(from)} oder höher; ${percent(most)} sind ${IN_CLASSES[level]} üblich.`,
  recoveryDebt: ({ block, last, work, at, have, need }) =>
    `${block}${last === undefined ? '' : ` bis ${last}`}: ${duration(work)} ${at === null ? 'mit voller Kraft' : `bei Belastung ${number(at, 1)}`} und danach ${
      have === null ? 'keine Erholung' : `${duration(have)} Erholung`
    }; nötig sind ${duration(need)}.`,
  giveFromNext: ({ block, next, length }) => `${length} von ${next} an ${block} geben`,
  gaveFromNext: ({ block, next, length }) => `${length} von ${next} an ${block} gegeben`,
  recoveriesShrink: ({ work, rest }) =>
    `Die harten Belastungen werden länger (${work.map(duration).join(', ')}), die Erholungen kürzer (${rest.map(duration).join(', ')}).`,
  longStanding: ({ seconds, most }) =>
    `Die Fahrer sind ${duration(seconds)} aus dem Sattel, ohne sich zu setzen; mehr als ${duration(most)} sollten es nicht sein.`,
  reserveRunsOut: ({ rider, block, at, may, models, of, less }) =>
    `Für ${rider} ${may ? 'könnte' : 'ist'} die Reserve in den Beinen in ${block} bei ${clock(at)} ${may ? 'aufgebraucht sein' : 'aufgebraucht'}${
      models === of ? '' : `, nach ${models} von ${of} Modellen`
    }; ${less === null ? 'es braucht einen leichteren Block oder eine längere Erholung davor' : `mit ${measures.knob(less)} weniger würde sie reichen`}.`,
  offerEasier: ({ words }) => `„${words}“ anbieten`,
  offeredEasier: ({ block }) => `Leichtere Option in ${block} angeboten`,

  difficultyForLevel: ({ points, level, most, reasons }) =>
    `Schwierigkeit ${number(points, 0)} von 100; ${CLASSES[level]} bleiben meist bei höchstens ${most}. Hauptgrund: ${and(reasons)}.`,
  planEffort: ({ block, level }) => `in ${block} Belastung ${effort(level)} planen`,
  plannedEffort: ({ block, level }) => `Belastung von ${block} auf ${effort(level)} gestellt`,
  slowMoves: ({ counts, slower }) => `Bewegungen auf ${counts} auf ${slower} verlangsamen`,
  slowedMoves: ({ counts, slower }) => `Bewegungen auf ${counts} auf ${slower} Zählzeiten verlangsamt`,

  sideBalance: ({ more, most, less, least }) =>
    `Akzente: ${number(most)} auf dem ${FOOT[more]} Fuß, ${number(least)} auf dem ${FOOT[less]}.`,
  holdBalance: ({ more, most, less, least }) =>
    `Einseitig gehaltene Bewegungen: ${SIDES[more]} zusammen ${timeOn(most)}, ${SIDES[less]} ${timeOn(least)}.`,
  leadWith: ({ song, foot }) => `${song} mit dem ${FOOT[foot]} Fuß beginnen`,
  ledWith: ({ song, foot }) => `Startfuß von ${song} auf ${SIDES[foot]} gestellt`,
  alternate: ({ block }) => `in ${block} die Seite wechseln`,
  alternated: ({ block }) => `Seitenwechsel in ${block} geplant`,
  otherSide: ({ block, side }) => `in ${block} nach ${SIDES[side]} gehen`,
  wentOtherSide: ({ block, side }) => `Seite in ${block} auf ${SIDES[side]} gestellt`,

  water: ({ seconds }) => `${duration(seconds)} lang keine Trinkpause. In einem warmen Raum ist früher besser.`,
  drinkIn: ({ block }) => `in ${block} trinken`,
  markedDrink: ({ block }) => `Trinkpause in ${block} eingetragen`,
  hearing: ({ level, minutes }) =>
    `Bei den ${number(level)} dB, die in solchen Stunden gemessen wurden, sind ${number(minutes, 0)} Minuten der Lärm eines ganzen Tages; halt die Musik leiser.`,
  briefing: 'Wer neu ist, muss vor dem ersten Song Bremse, Grundwiderstand und Einstellung des Rads erklärt bekommen.',
  addBriefing: ({ seconds }) => `Begrüßung von ${duration(seconds)} einplanen`,
  addedBriefing: 'Begrüßung eingeplant',
  newcomers: ({ from }) =>
    `Wer neu ist, steigert sich langsam: Gib vor der ersten Belastung von ${effort(from)} oder mehr eine Obergrenze vor und die Erlaubnis auszusetzen.`,
  allOutCare: ({ block }) =>
    `${block} geht bis zum Äußersten: Wer Beschwerden oder eine bekannte Erkrankung hat, braucht eine Freigabe, falls die Regeln deines Studios es verlangen; bei Schwindel, Brustschmerz oder ungewöhnlicher Atemnot aufhören.`,
  walkStanding: ({ block }) => `Beim Gang durch den Raum in ${block} bleiben die Fahrer im Stehen; ein sitzender Block passt besser.`,
  walkShort: ({ block, seconds, needed }) => `${block} dauert ${duration(seconds)}; ein Gang durch den Raum braucht ${duration(needed)}.`,

  handOverInPush: ({ name, voice, block }) =>
    `${name} ${mic(voice)} bei ${block} mitten in einem Push; wechselt dort, wo sich alle erholen.`,
  moveHandOver: ({ block }) => `bei ${block} wechseln`,
  movedHandOver: ({ block }) => `Wechsel nach ${block} verlegt`,
  handOverOffPhrase: ({ name, voice, block, counts, unit, after }) =>
    `${name} ${mic(voice)} bei ${block}, ${measures.eights(counts, unit)} ${after ? 'nach' : 'vor'} dem Ende einer Phrase.`,
  leaderWithoutBlock: ({ name }) => `${name} leitet keinen Block und spricht in keinem; wähle Blöcke aus und gib sie ${name}.`,
  teachWithout: ({ name }) => `ohne ${name} unterrichten`,
  taughtWithout: ({ name }) => `${name} aus diesem Ride genommen`,
  leadAndVoiceApart: ({ leads, speaks, block, others }) =>
    `${leads} leitet und ${speaks} spricht in ${block}${
      others === 0 ? '' : others === 1 ? ' und im Block danach' : ` und in den ${others} Blöcken danach`
    }: Macht aus, wer zählt und wer das Ende ansagt.`,
  giveMic: ({ name }) => `${name} das Mikrofon geben`,
  gaveMic: ({ name }) => `${name} hat jetzt das Mikrofon`,
}
