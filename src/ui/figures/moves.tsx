import { Dot, Line } from './strokes.tsx'

/** Moves on top of the ride, as the path the body takes. */
export const moves = {
  jumps: <Line d="M1.25 12.5Q2.25 4 4.75 4T8 12.5Q9 4 11.5 4T14.75 12.5" />,
  lean: (
    <>
      <Dot x={13} y={3.5} r={1.9} />
      <circle cx={3} cy={3.5} r={1.4} strokeWidth={1} />
      <Line d="M4.5 14.25H11.5M8 14 11.75 6.5" />
      <path d="M8 14 4.25 6.5" strokeWidth={1} strokeDasharray="1.5 2" />
    </>
  ),
  press: (
    <>
      <Dot x={8} y={3} r={1.9} />
      <Line d="M1.5 14H14.5M5 13.75 2.25 10 5.25 7H10.75L13.75 10 11 13.75" />
    </>
  ),
  pulse: <Line d="M8 3V13M5.25 5.5 8 2.75 10.75 5.5M5.25 10.5 8 13.25 10.75 10.5" />,
  travelBack: <Line d="M14 5H2.25M5 2.25 2.25 5 5 7.75M2 11H13.75M11 8.25 13.75 11 11 13.75" />,
} as const
