/** What the lines of the chart stand for; they differ without their colours. */
export function Legend() {
  return (
    <ul className="legend" aria-label="lines of the chart">
      <li>
        <Sample className="curve-asked" /> asked
      </li>
      <li>
        <Sample className="curve-strain" /> strain
      </li>
    </ul>
  )
}

function Sample({ className }: { className: string }) {
  return (
    <svg aria-hidden="true">
      <path d="M0 4H22" className={className} />
    </svg>
  )
}
