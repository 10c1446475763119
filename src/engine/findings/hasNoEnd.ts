import type { Facts } from './facts.ts'

/** Songs at the end still wait for their blocks: what is last so far is not what riders end with. */
export const hasNoEnd = ({ ride }: Facts): boolean => ride.sections.at(-1)?.blocks.length === 0
