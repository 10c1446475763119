import type { Ride } from '#plan/model.ts'
import type { Language } from '#words/language.ts'
import { english } from './english/english.ts'
import { german } from './german/german.ts'
import type { Voice } from './voice.ts'

const VOICES: Readonly<Record<Language, Voice>> = { en: english, de: german }

/** What a draft of a ride says, in the language its riders are spoken to in. */
export const voiceOf = ({ language = 'en' }: Pick<Ride, 'language'>): Voice => VOICES[language]
