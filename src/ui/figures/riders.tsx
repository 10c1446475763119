import { Dot, Line } from './strokes.tsx'

/** Riders from the side, facing right. The saddle is always drawn, so that a seat left empty is seen. */
const Saddle = () => <Line d="M1.5 10.25H5.75" />

export const riders = {
  seated: (
    <>
      <Dot x={9.75} y={3} r={1.9} />
      <Line d="M3.9 9.5 7.9 5.9 12 8.75H14.25M3.9 9.6 9.25 10.6 7.5 14.75" />
      <Saddle />
    </>
  ),
  standing: (
    <>
      <Dot x={10.4} y={2.4} r={1.9} />
      <Line d="M8.25 9.1 9.2 5.4 12.25 8.4H14.25M8.25 9.1 9.5 11.9 7.5 14.75" />
      <Saddle />
    </>
  ),
  hovering: (
    <>
      <Dot x={12.4} y={4.1} r={1.9} />
      <Line d="M4.2 7.1 9.9 6.1 12.1 9.1H14.25M4.2 7.1 9.5 9.75 7.5 14.75" />
      <Line d="M1.5 11.5H5.25" />
    </>
  ),
  offBike: (
    <>
      <Dot x={8.25} y={2.4} r={1.9} />
      <Line d="M8 5.25V9.5M8 9.5 5 14.75M8 9.5 10.75 14.75M4.75 9 8 5.6 11.25 9" />
    </>
  ),
  run: (
    <>
      <Dot x={10.6} y={2.4} r={1.9} />
      <Line d="M7 9 9 5.25 6 5.5 4.25 8M9 5.25 11.25 7.75H13.5M7 9 10 10.75 9.5 14.75M7 9 5.75 12H2" />
    </>
  ),
  stretch: (
    <>
      <Dot x={6.1} y={4.5} r={1.9} />
      <Line d="M2 14.25H14M8 14V9.5Q8 7 11 5L13.75 1.75M7.9 9 4.4 8.4 2.5 5" />
    </>
  ),
} as const
