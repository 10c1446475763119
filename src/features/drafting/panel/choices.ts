import { type CueMoment, type Hands, type Level, POSTURES, type Posture, type Terrain } from '#plan/model.ts'
import type { FigureName } from '#ui/figures/Figure.tsx'
import type { Choice } from '#ui/Select.tsx'
import { words } from '#words/words.ts'

/** The words the panel's lists are made of, in the order they are offered. */

type Figured<V extends string> = Choice<V> & { figure: FigureName }

export const postureChoices = (): readonly Figured<Posture>[] =>
  POSTURES.map((posture) => ({ value: posture, label: words.names.posture({ posture }), figure: posture }))

export const handsChoices = (): readonly Figured<Hands>[] =>
  HANDS.map((hands) => ({ value: hands, label: words.names.hands({ hands }), figure: hands }))

export const terrainChoices = (): readonly Choice<Terrain>[] =>
  TERRAINS.map((terrain) => ({ value: terrain, label: words.names.terrain({ terrain }) }))

export const momentChoices = (): readonly Choice<CueMoment>[] =>
  MOMENTS.map((moment) => ({ value: moment, label: words.panels.moment({ moment }) }))

export const levelChoices = (): readonly Choice<Level>[] => LEVELS.map((level) => ({ value: level, label: words.names.level({ level }) }))

const HANDS: readonly Hands[] = ['centre', 'wide', 'ends']
const TERRAINS: readonly Terrain[] = ['flat', 'tempo', 'hill', 'run', 'jumps', 'surge', 'push', 'recover', 'flush', 'stretch', 'hold']
const MOMENTS: readonly CueMoment[] = ['preview', 'announce', 'countIn', 'action', 'form', 'story']
const LEVELS: readonly Level[] = ['beginner', 'mixed', 'advanced']
