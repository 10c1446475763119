import type { Span } from '#engine/played.ts'

/**
 * Whether the plan does not say what riders do in a span: in open tails, whole open songs among
 * them, and in the lead-in after one, which has no block to carry on. For `filter` over all spans of a ride.
 */
export const isUnplanned = ({ kind }: Span, index: number, spans: readonly Span[]): boolean =>
  kind === 'openTail' || (kind === 'leadIn' && spans[index - 1]?.kind === 'openTail')
