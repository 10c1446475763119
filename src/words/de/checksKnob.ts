import type { en } from '#words/en/index.ts'
import type { KnobSize } from '#words/en/measures.ts'
import { duration, effort, effortRange, number, setting, signedSetting } from '#words/forms.ts'
import { measures } from './measures.ts'

const DOING = {
  stands: 'steht',
  jumps: 'springt',
  moves: 'bewegt sich aus dem Sattel',
  goesHard: 'fährt hart',
  pedalsFast: 'tritt schnell',
}

const change = ({ steps, ...scale }: KnobSize): string =>
  `${measures.knob({ ...scale, steps: Math.abs(steps) })} ${steps > 0 ? 'mehr' : 'weniger'}`

export const checksKnob: typeof en.checksKnob = {
  knobLoose: ({ block, size }) => `${block} nimmt ${measures.knob(size)} mehr weg, als der Knopf hat.`,
  knobTight: ({ block, size }) => `${block} verlangt ${measures.knob(size)} mehr, als der Knopf hat.`,
  stopAtLoosest: 'am losen Ende des Knopfs aufhören',
  capAtTightest: 'am festen Ende des Knopfs aufhören',
  keptInKnob: ({ block }) => `${block} im Bereich des Knopfs gehalten`,

  checkpointMissed: ({ block, told, reached, stepsPerUnit, off, byChange }) =>
    `In ${block} heißt es, alle sollten bei ${measures.settingRange(told, stepsPerUnit)} sein, aber die Ansagen führen zu ${measures.standing(reached, stepsPerUnit)}: ${
      byChange ? 'Der Änderung' : 'Ihnen'
    } fehlen ${signedSetting(off, stepsPerUnit)}.`,
  checkpointLoose: ({ block, told, reached, stepsPerUnit }) => {
    const { low, high } = reached
    const left =
      low === null || high === null
        ? `bei ${measures.standing(reached, stepsPerUnit)}`
        : `irgendwo zwischen ${setting(low, stepsPerUnit)} und ${setting(high, stepsPerUnit)}`
    return `In ${block} heißt es, alle sollten bei ${measures.settingRange(told, stepsPerUnit)} sein; nach den Ansagen sind sie ${left}.`
  },
  setCheckpoint: ({ told, stepsPerUnit }) => `Kontrollpunkt auf ${measures.settingRange(told, stepsPerUnit)} setzen`,
  checkpointSet: ({ block, told, stepsPerUnit }) => `Kontrollpunkt von ${block} auf ${measures.settingRange(told, stepsPerUnit)} gesetzt`,
  wideSpread: ({ seconds, size }) =>
    `${duration(seconds)} lang können die Fahrer ${measures.knob(size)} auseinanderliegen; sag, wo sie sein sollen.`,
  openEnd: ({ block, before, stepsPerUnit, seconds }) =>
    `${block} baut auf „${measures.standing(before, stepsPerUnit)}“ auf, und das ist seit ${duration(seconds)} offen; sag, wo die Fahrer sein sollen.`,
  callTotal: ({ total, stepsPerUnit }) => `Widerstand ansagen: ${setting(total, stepsPerUnit)}`,
  calledTotal: ({ block, total, stepsPerUnit }) => `In ${block} ${setting(total, stepsPerUnit)} angesagt`,
  ownTotals: ({ block, own, told, stepsPerUnit }) =>
    `Du fährst ${block} bei ${setting(own, stepsPerUnit)}, während du der Gruppe ${measures.standing(told, stepsPerUnit)} ansagst; Fahrer machen nach, was sie sehen.`,
  rideItAt: ({ total, stepsPerUnit }) => `bei ${setting(total, stepsPerUnit)} fahren`,
  ownTotalSet: ({ block, total, stepsPerUnit }) => `Eigenen Widerstand in ${block} auf ${setting(total, stepsPerUnit)} gestellt`,

  underBase: ({ block, size }) => `${block} liegt ${measures.knob(size)} unter dem Grundwiderstand.`,
  allOffAtPace: ({ block }) => `${block} ist ohne Widerstand und verlangt eine Trittfrequenz: Die Pedale könnten durchgehen.`,
  allOff: ({ block }) => `${block} ist ohne Widerstand. Nur zum lockeren Ausrollen.`,
  keepAtBase: 'beim Grundwiderstand bleiben',
  keptAtBase: ({ block }) => `${block} auf Grundwiderstand gelassen`,
  tooLight: ({ block, doing, at, needed }) =>
    `${block} ${DOING[doing]} bei ${measures.overBase(at)}; damit alle die Kontrolle behalten, braucht es mindestens ${measures.overBase(needed)}.`,

  largestAdded: ({ block, size, most }) =>
    `${block} legt mit einer Ansage ${measures.knob(size)} drauf; ${measures.knob(most)} ist das Meiste, was Fahrer sicher finden.`,
  easyTotal: ({ block, level, at, most }) =>
    `${block} ist mit ${number(level, 1)} von 10 geplant, aber der Widerstand liegt bei ${measures.overBase(at)}; dafür ist ${measures.overBase(most)} das Meiste.`,
  endsHeavy: ({ over, most }) =>
    `Die Stunde endet bei ${measures.overBase(over)}; ${measures.overBase(most)} oder weniger lässt die Beine ausrollen.`,

  intentAgainstDemand: ({ block, at, fromBase, rpm, rider, estimated, planned, change: by, reaches, fix, reason }) => {
    const place = fromBase ? measures.overBase(at) : measures.knob(at)
    const said = `${block}, ${place}${rpm ? ` bei ${measures.rpmRange(rpm, 0)}` : ''}, ist für ${rider} etwa ${effortRange(estimated)} von 10, und du planst ${effortRange(planned)}`
    if (fix === 'closes' && by) return `${said}; nimm ${change(by)}.`
    if (fix === 'builds' && by) {
      return `${said}; ${change(by)} brächte es auf ${effort(reaches)}, aber die Ansagen davor und danach bauen aufeinander auf, und es gibt keine einzelne Zahl zu ändern.`
    }
    return `${said}${by ? `; mit ${change(by)} kommst du auf ${effort(reaches)}` : ''}; ${reason}.`
  },
  planInstead: (levels) => `stattdessen ${effortRange(levels)} planen`,
  plannedInstead: ({ block, ...levels }) => `Belastung von ${block} auf ${effortRange(levels)} gestellt`,
  beyondCalibration: ({ block, others, from, to, unit }) => {
    const blocks =
      others === 0 ? `${block} liegt` : `${block} und ${others === 1 ? 'ein weiterer Block' : `${others} weitere Blöcke`} liegen`
    return `${blocks} außerhalb der kalibrierten ${number(from)}–${number(to)} ${measures.unitOf(unit, true)} dieses Rads; die Belastung ist dort nach Gefühl geschätzt.`
  },

  knobLoosest: 'der Knopf ist ganz lose',
  nothingOverBase: 'über dem Grundwiderstand ist nichts mehr wegzunehmen',
  needs: ({ doing, least }) => `der Block ${DOING[doing]} und braucht dafür mindestens ${measures.overBase(least)}`,
  knobEnds: ({ at, stepsPerUnit }) => `der Knopf endet bei ${setting(at, stepsPerUnit)}`,
  easyMost: ({ most }) => `${measures.overBase(most)} ist das Meiste für eine so leichte Belastung`,
  endMost: ({ most }) => `eine Stunde endet höchstens bei ${measures.overBase(most)}`,
  addedMost: ({ most }) => `${measures.knob(most)} ist das Meiste für eine Ansage`,
  toldThere: ({ told, stepsPerUnit }) => `es heißt dort, alle sollten bei ${measures.settingRange(told, stepsPerUnit)} sein`,
  stepTooCoarse: 'ein Schritt dieses Rads ist zu grob dafür',
  nextStep: ({ level }) => `der nächste Schritt dieses Rads ist schon ${effort(level)}`,
  onlyGuessed: 'außerhalb der kalibrierten Punkte sind die Watt nur geraten, weitere Schritte sagen also nichts',
  rampApart: 'Belastung und Last steigen und fallen hier nicht gemeinsam, also passt keine einzelne Änderung für beide Enden',

  standsAt: ({ bike, block, total }) => `Auf „${bike}“ liegt ${block} bei ${total}.`,
  isAllOff: ({ bike, block }) => `Auf „${bike}“ ist ${block} ganz ohne Widerstand.`,
  isByFeel: ({ bike, block }) => `Auf „${bike}“ wird ${block} nach Gefühl gefahren.`,
}
