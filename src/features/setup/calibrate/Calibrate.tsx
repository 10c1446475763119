import { useRide } from '#features/setup/parts/useRide.ts'
import { ByFeel } from './ByFeel.tsx'
import { ByWatts } from './ByWatts.tsx'
import './calibrate.css'

/** How a bike is calibrated: by what its console shows, or by what it feels like. */
export type Way = 'watts' | 'feel'

interface Props {
  way: Way
  onClose: () => void
}

/** A calibration from its first reading to the moment it is taken or left. */
export function Calibrate({ way, onClose }: Props) {
  const bike = useRide((ride) => ride.bike)
  return way === 'watts' ? <ByWatts bike={bike} onClose={onClose} /> : <ByFeel bike={bike} onClose={onClose} />
}
