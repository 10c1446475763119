/** The mean of every so many values from one on, which may be given any number of turns later; 0 where there is none. */
export function meanAt(of: ArrayLike<number>, from: number, every: number): number {
  let sum = 0
  let n = 0
  for (let k = from % every; k < of.length; k += every, n++) sum += of[k]!
  return n === 0 ? 0 : sum / n
}
