/**
 * Yardsticks: the mechanics of a crank and of a belt-braked ergometer, as printed. The page computes none of it; its
 * friction brake is held against the belt.
 */

/** Standard gravity, m/s². */
const GRAVITY = 9.80665

/** One watt in kilogram-metres a minute: 60 ÷ 9.80665. Some slides round it to 6, two per cent off. */
export const KGM_PER_MINUTE_OF_WATT = 60 / GRAVITY

/** Mean torque at the crank in N·m: power over angular speed. */
export const crankTorque = (watts: number, rpm: number): number => (60 * watts) / (2 * Math.PI * rpm)

/** Mean tangential force on a pedal in N, for a crank of that length in metres. */
export const pedalForce = (watts: number, rpm: number, crankMetres: number): number => crankTorque(watts, rpm) / crankMetres

/** Work of a belt-braked ergometer in kgm a minute: load × belt travel a turn of the crank × cadence. */
export const beltWork = (kiloponds: number, rpm: number, metresPerTurn = 6): number => kiloponds * metresPerTurn * rpm

/** Power of a belt-braked ergometer. */
export const beltPower = (kiloponds: number, rpm: number, metresPerTurn = 6): number =>
  beltWork(kiloponds, rpm, metresPerTurn) / KGM_PER_MINUTE_OF_WATT
