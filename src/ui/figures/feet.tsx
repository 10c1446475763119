import { Line } from './strokes.tsx'

const LEFT_SOLE =
  'M4.6 1.9C6.6 1.9 7 4.1 6.7 6.2C6.5 7.8 6.3 8.6 6.4 10.4C6.5 12.6 6 14.1 4.6 14.1C3.2 14.1 2.8 12.6 2.7 10.6C2.6 8.6 1.9 7.6 1.9 5.4C1.9 3.3 3 1.9 4.6 1.9Z'

/** Both soles from above; the filled one lands on the one. */
const Soles = ({ lead }: { lead: 'left' | 'right' }) => (
  <>
    <path d={LEFT_SOLE} fill={lead === 'left' ? 'currentColor' : 'none'} strokeWidth={lead === 'left' ? 1.5 : 1} />
    <path
      d={LEFT_SOLE}
      transform="matrix(-1 0 0 1 16 0)"
      fill={lead === 'right' ? 'currentColor' : 'none'}
      strokeWidth={lead === 'right' ? 1.5 : 1}
    />
  </>
)

export const feet = {
  left: <Soles lead="left" />,
  right: <Soles lead="right" />,
  /** The turn of the cranks, paused. */
  legsStill: (
    <>
      <circle cx={8} cy={8} r={6.25} />
      <Line d="M6.1 5.5V10.5M9.9 5.5V10.5" />
    </>
  ),
} as const
