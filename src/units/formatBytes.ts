import { formatNumber } from './formatNumber.ts'

/** A file's size as people read it: "640 kB", "8.2 MB"; in powers of a thousand, as disks are sold. */
export function formatBytes(bytes: number): string {
  if (bytes <= 999_000) return `${formatNumber(Math.ceil(bytes / 1000), 0)} kB`
  return `${formatNumber(bytes / 1_000_000, bytes < 9_950_000 ? 1 : 0)} MB`
}
