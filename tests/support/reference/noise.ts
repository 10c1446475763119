/** A yardstick: the steady eight-hour level of a dose, 10·log₁₀(D/100) + 85. Source: AIHA calculator for NIOSH doses. */
export const averageLevel = (dose: number): number => 10 * Math.log10(dose / 100) + 85
