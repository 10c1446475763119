import type { en } from '#words/en/index.ts'
import { measures } from './measures.ts'

const SEAT = { seated: 'im Sitzen', standing: 'im Stehen' }

const SIDES = { left: 'links', right: 'rechts' }

const STROKES = { 0.5: 'im halben Tempo', 1: 'auf dem Beat', 2: 'im doppelten Tempo' }

export const checksRiding: typeof en.checksRiding = {
  cadenceBounds: ({ block, seat, rpm, usual }) =>
    `${block} wird ${SEAT[seat]} mit ${measures.rpmRange(rpm)} gefahren; ${SEAT[seat]} sind ${measures.rpmRange(usual)} üblich.`,
  rideStrokes: ({ strokes }) => `${STROKES[strokes]} fahren`,
  putStrokes: ({ block, strokes }) => `${block} jetzt ${STROKES[strokes]}`,
  rideSeated: 'sitzend fahren',
  noBeat: ({ block }) => `${block} hat keinen Beat, und keine Trittfrequenz ist gesetzt.`,
  offBeat: ({ block }) => `${block} liegt neben dem Beat, und keine Trittfrequenz ist gesetzt.`,
  offBeatCadence: ({ block, rpm, beat }) =>
    `${block} steht auf ${measures.rpmRange(rpm)}, auf diesem Beat drehen die Beine aber mit ${measures.rpmRange(beat)}.`,
  markOffBeat: 'als neben dem Beat markieren',
  markedOffBeat: ({ block }) => `${block} als neben dem Beat markiert`,

  leadUnset: ({ song, block }) => `Für ${song} ist kein Startfuß gesetzt, daher zählen die Akzente von ${block} für kein Bein.`,
  noFootOnOne: ({ block }) => `In ${block} trifft kein Fuß die Eins: Der Block davor lässt die Füße zwischen zwei Tritten.`,
  leadOpen: ({ block }) => `Der Startfuß von ${block} ist offen: Der Block davor verlässt den Beat.`,
  footFlips: ({ foot, block, before }) => `In ${block} liegt die Eins ${SIDES[foot]}: ${before} hat eine ungerade Zahl von Tritten.`,
  lead: ({ foot }) => `${SIDES[foot]} beginnen`,
  led: ({ block, foot }) => `Startfuß von ${block} auf ${SIDES[foot]} gestellt`,

  endsSeated: ({ block }) => `${block} ist sitzend mit den Händen an den Hörnchen; so weit greift man beim Klettern im Stehen.`,
  centerStanding: ({ block }) => `${block} ist aus dem Sattel mit den Händen in der Mitte; breit ist sicherer.`,
  handsWide: 'Hände breit',
  setHandsWide: ({ block }) => `${block} auf Hände breit gestellt`,

  avoidedMove: ({ block, move, instead }) =>
    `${block} hat „${move}“, und das gibt es in diesem Raum nicht; fahr ohne${instead === null ? '' : ` oder mit „${instead}“ auf denselben Zählzeiten`}.`,
  leaveMoveOut: ({ move }) => `„${move}“ weglassen`,
  leftMoveOut: ({ block, move }) => `„${move}“ aus ${block} genommen`,
  makeMove: ({ move }) => `stattdessen „${move}“`,
  madeMove: ({ block, move }) => `Bewegung von ${block} durch „${move}“ ersetzt`,
  avoidedHover: ({ block }) => `${block} ist im Hover, und das gibt es in diesem Raum nicht; fahr den Block stehend.`,
  rideStanding: 'stehend fahren',
  madeStanding: ({ block }) => `${block} auf stehend gestellt`,
  avoidedJumps: ({ block }) => `${block} sind Jumps, und die gibt es in diesem Raum nicht; mach daraus einen sitzenden Berg.`,
  makeClimb: 'sitzenden Berg daraus machen',
  madeClimb: ({ block }) => `Aus ${block} einen sitzenden Berg gemacht`,
}
