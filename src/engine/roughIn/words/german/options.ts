import type { Voice } from '#engine/roughIn/words/voice.ts'

export const options: Voice['options'] = {
  easier: ({ kind, counts = 8, seconds, more, some }) => {
    const less = [`${more} weniger, gleiche Beine`, `${some} weniger, gleiche Beine`]
    switch (kind) {
      case 'jumps':
        return [
          'sitzen bleiben und den Beat fahren',
          'sitzen bleiben, gleicher Widerstand',
          ...(counts < 16 ? [`halb so schnell: ${counts * 2} hoch, ${counts * 2} runter`] : []),
        ]
      case 'move':
        return [
          'Beine weiter, Bewegung weglassen',
          'sitzen bleiben, gleicher Widerstand',
          'stehen ohne die Bewegung',
          'kleiner, langsamer oder im Sitzen',
        ]
      case 'tallClimb':
      case 'tallFlat':
      case 'run':
        return [
          'sitzen bleiben, gleicher Widerstand',
          `sitzen bleiben, ${some} weniger`,
          ...(seconds >= 28 ? ['die erste Hälfte stehen, dann sitzen'] : []),
          'hinsetzen, wann ihr wollt, im Beat bleiben',
        ]
      case 'push':
      case 'surge':
        return [...less, 'Beine anheben, Knopf lassen', ...(seconds >= 20 ? ['die erste Hälfte Gas, dann halten'] : [])]
      default:
        return [...less, 'gleicher Widerstand, langsamere Beine']
    }
  },
  harder: ({ kind, seconds, some }) => {
    switch (kind) {
      case 'climb':
      case 'tempo':
      case 'tallClimb':
        return [`${some} mehr`, ...(seconds >= 30 ? [`${some} mehr in der zweiten Hälfte`] : [])]
      case 'push':
      case 'surge':
        return [`${some} mehr, gleiche Beine`, `${some} mehr, wenn der Atem reicht`]
      case 'run':
        return [`${some} mehr, gleicher Beat`]
      default:
        return []
    }
  },
}
