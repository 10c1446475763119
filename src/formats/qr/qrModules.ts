import { encode } from 'uqr'

/** A QR code as rows of modules, true for dark, with the four light modules around it that readers need (ISO/IEC 18004). */
type QrModules = readonly (readonly boolean[])[]

const QUIET_ZONE = 4

/**
 * Text as a QR code, in the smallest version that holds it and with the most error correction
 * that version has room for.
 * @param text at most 2,953 bytes of UTF-8, what the largest version holds
 */
export const qrModules = (text: string): QrModules => encode(text, { ecc: 'L', boostEcc: true, border: QUIET_ZONE }).data
