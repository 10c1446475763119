import type { Voice } from '#engine/roughIn/words/voice.ts'

export const options: Voice['options'] = {
  easier: ({ kind, counts = 8, seconds, more, some }) => {
    const less = [`${more} less, same legs`, `${some} less, same legs`]
    switch (kind) {
      case 'jumps':
        return [
          'stay seated and ride the beat',
          'stay seated, same load',
          ...(counts < 16 ? [`twice as slow: ${counts * 2} up, ${counts * 2} down`] : []),
        ]
      case 'move':
        return ['keep the legs, leave out the move', 'stay seated, same load', 'stand without the move', 'smaller, slower, or seated']
      case 'tallClimb':
      case 'tallFlat':
      case 'run':
        return [
          'stay seated, same load',
          `stay seated, ${some} less`,
          ...(seconds >= 28 ? ['stand for the first half, then sit'] : []),
          'sit when you need to, keep the beat',
        ]
      case 'push':
      case 'surge':
        return [...less, 'lift the legs, leave the knob', ...(seconds >= 20 ? ['go for the first half, then hold'] : [])]
      default:
        return [...less, 'same knob, slower legs']
    }
  },
  harder: ({ kind, seconds, some }) => {
    switch (kind) {
      case 'climb':
      case 'tempo':
      case 'tallClimb':
        return [`${some} more`, ...(seconds >= 30 ? [`${some} more for the second half`] : [])]
      case 'push':
      case 'surge':
        return [`${some} more, same legs`, `${some} more if the breath is there`]
      case 'run':
        return [`${some} more, same beat`]
      default:
        return []
    }
  },
}
