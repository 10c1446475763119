import { Dot, Line } from './strokes.tsx'

/**
 * Riders from the side, facing right, on one and the same bike: what tells them apart is the body alone,
 * above all where the head is. Wheels make it a bike at three millimetres, and are drawn lighter than the
 * rider; the saddle is as heavy, so that a seat left empty is seen.
 */
const Bike = () => (
  <>
    <Line d="M1.75 8.5H5.25" />
    <g strokeWidth={1}>
      <circle cx={3.25} cy={12.6} r={2.75} />
      <circle cx={12.75} cy={12.6} r={2.75} />
      <Line d="M12.75 12.6 12.2 6.9" />
    </g>
  </>
)

export const riders = {
  seated: (
    <>
      <Dot x={6.6} y={1.95} r={1.85} />
      <Line d="M4 7.6 5.6 4.5 9.2 6.8H13.2M4 7.6 8.8 8.4 7.9 12.4" />
      <Bike />
    </>
  ),
  standing: (
    <>
      <Dot x={10.6} y={1.95} r={1.85} />
      <Line d="M8.4 7.1 9 4.2 11 6.8H13.2M8.4 7.1 8.9 9.6 7.8 12.8" />
      <Bike />
    </>
  ),
  hovering: (
    <>
      <Dot x={11} y={2.7} r={1.85} />
      <Line d="M3.9 5.4 8.9 4.6 10.4 6.8H13.2M3.9 5.4 8.8 8.3 7.9 12.4" />
      <Bike />
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
