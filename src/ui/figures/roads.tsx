import { Dot, Line } from './strokes.tsx'

/** What the road does, and what the legs do on it. */
export const roads = {
  flat: (
    <>
      <Line d="M1.5 12H14.5" />
      <Dot x={8} y={8.25} r={2} />
    </>
  ),
  hill: (
    <>
      <Line d="M1.5 13.25H14.25V4.5Z" />
      <Dot x={6.5} y={5.75} r={2} />
    </>
  ),
  crest: (
    <>
      <Line d="M1.5 13.5 8 7 14.5 13.5" />
      <Dot x={8} y={3.25} r={2} />
    </>
  ),
  corner: <Line d="M4 14.25V9.5Q4 5.5 8 5.5H13.5M10.5 2.5 13.5 5.5 10.5 8.5" />,
  allOff: <Line d="M2 13.75H14M8 2V10.25M4.5 7 8 10.5 11.5 7" />,
  tempo: <Line d="M2.5 4.5V11.5M6.2 4.5V11.5M9.8 4.5V11.5M13.5 4.5V11.5" />,
  surge: <Line d="M1.5 12.5H5L9.5 4H14.5" />,
  push: <Line d="M2.5 3 7.5 8 2.5 13M8.5 3 13.5 8 8.5 13" />,
  recover: <Line d="M1.5 3.5Q6 3.5 7.75 7.75T14.5 12.25" />,
  flush: <Line d="M1.5 6Q3.1 3.2 4.75 6T8 6 11.25 6 14.5 6M1.5 11Q3.1 8.2 4.75 11T8 11 11.25 11 14.5 11" />,
  hold: (
    <>
      <Line d="M2 11.5Q2 4 8 4T14 11.5" />
      <Dot x={8} y={10.5} r={1.9} />
    </>
  ),
  water: <Line d="M8 1.75Q12.5 7.25 12.5 10A4.5 4.5 0 0 1 3.5 10Q3.5 7.25 8 1.75Z" />,
} as const
