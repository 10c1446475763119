import { displayable, formatHex, wcagContrast, wcagLuminance } from 'culori'

/** WCAG relative luminance of a CSS colour, as it is shown: OKLCH is turned into 8-bit sRGB first. */
export const luminance = (colour: string): number => wcagLuminance(formatHex(colour)!)

/** WCAG contrast ratio of two CSS colours as they are shown, 1–21. */
export const contrast = (one: string, other: string): number => wcagContrast(formatHex(one)!, formatHex(other)!)

/** Whether a screen can show the colour as written, without moving it into its range. */
export const inGamut = (colour: string): boolean => displayable(colour)
