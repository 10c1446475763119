import { Dot, Line } from './strokes.tsx'

/** The bar from above, its ends pointing forward, and where the two hands lie on it. */
const Bar = () => <Line d="M2.75 3V9.5Q2.75 12 5.25 12H10.75Q13.25 12 13.25 9.5V3" />

export const hands = {
  centre: (
    <>
      <Bar />
      <Dot x={6} y={12} r={2} />
      <Dot x={10} y={12} r={2} />
    </>
  ),
  wide: (
    <>
      <Bar />
      <Dot x={3.25} y={10.75} r={2.25} />
      <Dot x={12.75} y={10.75} r={2.25} />
    </>
  ),
  ends: (
    <>
      <Bar />
      <Dot x={2.75} y={3.5} r={2.25} />
      <Dot x={13.25} y={3.5} r={2.25} />
    </>
  ),
} as const
