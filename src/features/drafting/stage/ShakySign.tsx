/** A wavering line: this block is marked as shaky. The word stands beside it where there is room. */
export function ShakySign() {
  return (
    <svg className="shaky-sign" viewBox="0 0 14 8" width="14" height="8" aria-hidden="true">
      <path d="M1 5.5 3.4 2 5.8 6 8.2 2 10.6 6 13 2.5" fill="none" stroke="currentColor" strokeWidth="1.5" strokeLinejoin="round" />
    </svg>
  )
}
