import { sayCall } from '#engine/ledger/sayCall.ts'
import type { Scale } from '#engine/speech/speech.ts'

const ANYWHERE = { low: 0, nominal: 0, high: 0 }

/** A change of so many steps as it is called out. */
export const sayChange = (steps: number, scale: Scale): string =>
  sayCall({ kind: 'change', mode: 'exact', steps }, ANYWHERE, ANYWHERE, scale, 'base').call
