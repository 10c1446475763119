import type { Ride } from '#plan/model.ts'
import type { Language } from '#words/language.ts'
import { english } from './english/english.ts'
import { german } from './german/german.ts'
import type { Speech } from './speech.ts'

const SPEECHES: Readonly<Record<Language, Speech>> = { en: english, de: german }

/** The language a ride's riders are spoken to in. */
export const speechOf = ({ language = 'en' }: Pick<Ride, 'language'>): Speech => SPEECHES[language]
