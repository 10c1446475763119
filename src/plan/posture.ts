import type { Block, Posture } from './model.ts'

/** Ridden with no weight on the saddle. */
const OUT_OF_SADDLE: Readonly<Record<Posture, boolean>> = { seated: false, standing: true, hovering: true, offBike: false }

/** Whether a block is ridden out of the saddle; riders off the bike are in no saddle and not out of it. */
export const isOutOfSaddle = ({ posture }: Pick<Block, 'posture'>): boolean => OUT_OF_SADDLE[posture]
