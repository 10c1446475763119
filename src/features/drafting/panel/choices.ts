import { type CueMoment, type Hands, type Level, POSTURES, type Posture, type Terrain } from '#plan/model.ts'
import { POSTURE_WORDS } from '#plan/posture.ts'
import type { FigureName } from '#ui/figures/Figure.tsx'
import type { Choice } from '#ui/Select.tsx'

/** The words the panel's lists are made of, in the order they are offered. */

export const POSTURE_CHOICES: readonly (Choice<Posture> & { figure: FigureName })[] = POSTURES.map((posture) => ({
  value: posture,
  label: POSTURE_WORDS[posture].is,
  figure: posture,
}))

export const HANDS_CHOICES: readonly (Choice<Hands> & { figure: FigureName })[] = [
  { value: 'centre', label: 'centre', figure: 'centre' },
  { value: 'wide', label: 'wide', figure: 'wide' },
  { value: 'ends', label: 'ends', figure: 'ends' },
]

export const TERRAIN_CHOICES: readonly Choice<Terrain>[] = [
  { value: 'flat', label: 'flat' },
  { value: 'tempo', label: 'tempo' },
  { value: 'hill', label: 'hill' },
  { value: 'run', label: 'run' },
  { value: 'jumps', label: 'jumps' },
  { value: 'surge', label: 'surge' },
  { value: 'push', label: 'push' },
  { value: 'recover', label: 'recover' },
  { value: 'flush', label: 'flush' },
  { value: 'stretch', label: 'stretch' },
  { value: 'hold', label: 'hold' },
]

export const MOMENT_CHOICES: readonly Choice<CueMoment>[] = [
  { value: 'preview', label: 'preview' },
  { value: 'announce', label: 'announce' },
  { value: 'countIn', label: 'count-in' },
  { value: 'action', label: 'action' },
  { value: 'form', label: 'form' },
  { value: 'story', label: 'story' },
]

export const LEVEL_CHOICES: readonly Choice<Level>[] = [
  { value: 'beginner', label: 'beginner' },
  { value: 'mixed', label: 'mixed' },
  { value: 'advanced', label: 'advanced' },
]
