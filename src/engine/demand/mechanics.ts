import type { Rpm, Watts } from '#units/units.ts'

/** Standard gravity, m/s². */
const GRAVITY = 9.80665

/** One watt in kilogram-metres a minute: 60 ÷ 9.80665. Some slides round it to 6, two per cent off. */
export const KGM_PER_MINUTE_OF_WATT = 60 / GRAVITY

/** Mean torque at the crank in N·m: power over angular speed. */
export const crankTorque = (watts: Watts, rpm: Rpm): number => (60 * watts) / (2 * Math.PI * rpm)

/** Mean tangential force on a pedal in N, for a crank of that length in metres. */
export const pedalForce = (watts: Watts, rpm: Rpm, crankMetres: number): number => crankTorque(watts, rpm) / crankMetres

/** Work of a belt-braked ergometer in kgm a minute: load × belt travel a turn of the crank × cadence. */
export const beltWork = (kiloponds: number, rpm: Rpm, metresPerTurn = 6): number => kiloponds * metresPerTurn * rpm

/** Power of a belt-braked ergometer. */
export const beltPower = (kiloponds: number, rpm: Rpm, metresPerTurn = 6): Watts =>
  beltWork(kiloponds, rpm, metresPerTurn) / KGM_PER_MINUTE_OF_WATT
