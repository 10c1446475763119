/** How light a colour of an element (“stroke”, “background-color”) is as it is drawn, 0 to 1; to be evaluated in the page. */
export function lightness(element: Element, of: string): number {
  const canvas = new OffscreenCanvas(1, 1).getContext('2d')!
  canvas.fillStyle = getComputedStyle(element).getPropertyValue(of)
  canvas.fillRect(0, 0, 1, 1)
  return Math.max(...canvas.getImageData(0, 0, 1, 1).data.slice(0, 3)) / 255
}
