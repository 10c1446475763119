/** All channels in equal parts; the channel itself where there is one. */
export function mixed(channels: readonly Float32Array[]): Float32Array {
  const [only] = channels
  if (only && channels.length === 1) return only
  const samples = new Float32Array(only?.length ?? 0)
  for (const channel of channels) for (let i = 0; i < samples.length; i++) samples[i]! += channel[i]! / channels.length
  return samples
}
