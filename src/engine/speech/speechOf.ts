import type { Ride } from '#plan/model.ts'
import type { Language } from '#words/language.ts'
import { english } from './english/english.ts'
import { german } from './german/german.ts'
import type { Speech } from './speech.ts'

const SPEECHES: Readonly<Record<Language, Speech>> = { en: english, de: german }

/** The language a ride's riders are spoken to in. */
export const speechOf = ({ language = 'en' }: Pick<Ride, 'language'>): Speech => SPEECHES[language]

/** The same by its code, where there is no ride: what a new one will be spoken in. */
export const speechIn = (language: Language): Speech => SPEECHES[language]
