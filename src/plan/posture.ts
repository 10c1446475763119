import type { Block, Posture } from './model.ts'

/** What a posture is called: where riders are, the call that brings them there, and how long they stay. */
export const POSTURE_WORDS: Readonly<Record<Posture, { is: string; call: string; lasts: string }>> = {
  seated: { is: 'seated', call: 'sit', lasts: 'seated for' },
  standing: { is: 'standing', call: 'up', lasts: 'up for' },
  hovering: { is: 'hovering', call: 'hover low', lasts: 'hover for' },
  offBike: { is: 'off the bike', call: 'off the bike', lasts: 'off for' },
}

/** Ridden with no weight on the saddle. */
const OUT_OF_SADDLE: Readonly<Record<Posture, boolean>> = { seated: false, standing: true, hovering: true, offBike: false }

/** Whether a block is ridden out of the saddle; riders off the bike are in no saddle and not out of it. */
export const isOutOfSaddle = ({ posture }: Pick<Block, 'posture'>): boolean => OUT_OF_SADDLE[posture]
