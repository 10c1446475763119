import { actions } from './actions.ts'
import { app } from './app.ts'
import { backup } from './backup.ts'
import { calibrating } from './calibrating.ts'
import { checkKinds } from './checkKinds.ts'
import { checkList } from './checkList.ts'
import { checks } from './checks.ts'
import { checksCues } from './checksCues.ts'
import { checksKnob } from './checksKnob.ts'
import { checksRide } from './checksRide.ts'
import { checksRiding } from './checksRiding.ts'
import { clipboard } from './clipboard.ts'
import { commands } from './commands.ts'
import { cueLine } from './cueLine.ts'
import { documents } from './documents.ts'
import { drafting } from './drafting.ts'
import { drafts } from './drafts.ts'
import { exports } from './exports.ts'
import { fields } from './fields.ts'
import { figures } from './figures.ts'
import { fit } from './fit.ts'
import { gestures } from './gestures.ts'
import { handover } from './handover.ts'
import { heard } from './heard.ts'
import { keys } from './keys.ts'
import { languages } from './languages.ts'
import { leading } from './leading.ts'
import { led } from './led.ts'
import { lineWords } from './lineWords.ts'
import { links } from './links.ts'
import { lists } from './lists.ts'
import { log } from './log.ts'
import { many } from './many.ts'
import { measures } from './measures.ts'
import { mergeFields } from './mergeFields.ts'
import { merging } from './merging.ts'
import { names } from './names.ts'
import { ownPatterns } from './ownPatterns.ts'
import { panels } from './panels.ts'
import { panelsBlock } from './panelsBlock.ts'
import { panelsRide } from './panelsRide.ts'
import { panelsSong } from './panelsSong.ts'
import { patterns } from './patterns.ts'
import { prepare } from './prepare.ts'
import { printed } from './printed.ts'
import { problems } from './problems.ts'
import { readOut } from './readOut.ts'
import { rehearsing } from './rehearsing.ts'
import { renaming } from './renaming.ts'
import { replacing } from './replacing.ts'
import { riders } from './riders.ts'
import { rules } from './rules.ts'
import { search } from './search.ts'
import { setup } from './setup.ts'
import { sheet } from './sheet.ts'
import { shelf } from './shelf.ts'
import { songPlaces } from './songPlaces.ts'
import { songPlans } from './songPlans.ts'
import { songs } from './songs.ts'
import { sources } from './sources.ts'
import { speech } from './speech.ts'
import { start } from './start.ts'
import { storage } from './storage.ts'
import { teaching } from './teaching.ts'
import { typedLine } from './typedLine.ts'
import { undoList } from './undoList.ts'

/** Every text in American English, by where it is met. The pattern for every other language. */
export const en = {
  actions,
  app,
  backup,
  calibrating,
  checkKinds,
  checkList,
  checks,
  checksCues,
  checksKnob,
  checksRide,
  checksRiding,
  clipboard,
  commands,
  cueLine,
  documents,
  drafting,
  drafts,
  exports,
  fields,
  figures,
  fit,
  gestures,
  handover,
  keys,
  heard,
  languages,
  leading,
  led,
  lineWords,
  links,
  lists,
  log,
  many,
  measures,
  mergeFields,
  merging,
  names,
  panels,
  panelsBlock,
  panelsRide,
  panelsSong,
  ownPatterns,
  patterns,
  prepare,
  printed,
  problems,
  readOut,
  renaming,
  rehearsing,
  replacing,
  riders,
  rules,
  search,
  setup,
  sheet,
  shelf,
  songPlaces,
  songPlans,
  songs,
  speech,
  sources,
  start,
  storage,
  teaching,
  typedLine,
  undoList,
}
