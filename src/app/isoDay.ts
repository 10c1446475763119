/** The day of an instant by the clock on this machine: "2026-11-25". */
export function isoDay(instant: number): string {
  const date = new Date(instant)
  const two = (value: number) => String(value).padStart(2, '0')
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`
}
