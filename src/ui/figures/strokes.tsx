/** A stroke of the family: 1.5 wide on the 16 grid, round where it ends and turns. */
export const Line = ({ d }: { d: string }) => <path d={d} />

/** A filled dot: a head, a hand, a rider on a road. */
export const Dot = ({ x, y, r = 1.75 }: { x: number; y: number; r?: number }) => (
  <circle cx={x} cy={y} r={r} fill="currentColor" stroke="none" />
)
