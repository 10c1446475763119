import { english } from '#engine/speech/english/english.ts'
import type { Speech } from '#engine/speech/speech.ts'

export const german: Speech = { ...english, language: 'de' }
