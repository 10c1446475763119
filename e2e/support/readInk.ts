import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** What is drawn on a page, piece by piece. All lengths in millimetres, from the page's top left corner. */
export interface PageInk {
  glyphs: Glyph[]
  /** Filled or stroked horizontal lines, the edges of tables and the like. */
  rules: Box[]
}

export interface Box {
  left: number
  top: number
  right: number
  bottom: number
}

/** One drawn character, by the bounds of its own drawing, not of its line. */
export interface Glyph extends Box {
  text: string
  /** Of the em. */
  size: number
}

const MM_PER_POINT = 25.4 / 72
/** A rule is this long and this thin at least. */
const RULE_LENGTH = 15
const RULE_WIDTH = 1

/** Reads where everything on a printed file's pages is drawn; fonts must be ours, which are printed as drawings. */
export async function readInk(file: Uint8Array): Promise<PageInk[]> {
  const document = await getDocument({ data: file.slice(), fontExtraProperties: true, verbosity: 0 }).promise
  try {
    const pages = await Promise.all(Array.from({ length: document.numPages }, (_, index) => document.getPage(index + 1)))
    const ink: PageInk[] = []
    for (const page of pages) ink.push(await inkOf(page))
    return ink
  } finally {
    await document.loadingTask.destroy()
  }
}

type Matrix = [a: number, b: number, c: number, d: number, e: number, f: number]

interface LoadedFont {
  fontMatrix: Matrix
  charProcOperatorList?: Record<string, { fnArray: number[]; argsArray: unknown[][] }>
}

interface ShownGlyph {
  unicode: string
  width: number
  operatorListId: string
}

async function inkOf(page: PDFPageProxy): Promise<PageInk> {
  const { fnArray, argsArray } = await page.getOperatorList()
  const [pageLeft = 0, , , pageTop = 0] = page.view
  const ink: PageInk = { glyphs: [], rules: [] }
  const stack: Matrix[] = []
  let matrix: Matrix = [1, 0, 0, 1, 0, 0]
  let line: Matrix = matrix
  let font: LoadedFont | undefined
  let size = 0

  const onPage = (inside: Matrix, [left, bottom, right, top]: readonly number[]): Box => {
    const corners = [
      [left!, bottom!],
      [right!, top!],
    ].map(([x, y]) => apply(inside, x!, y!))
    const [x1, x2] = corners.map(([x]) => (x - pageLeft) * MM_PER_POINT).sort((a, b) => a - b)
    const [y1, y2] = corners.map(([, y]) => (pageTop - y) * MM_PER_POINT).sort((a, b) => a - b)
    return { left: x1!, right: x2!, top: y1!, bottom: y2! }
  }

  for (const [index, operator] of fnArray.entries()) {
    const args = argsArray[index] ?? []
    switch (operator) {
      case OPS.save:
        stack.push(matrix)
        break
      case OPS.restore:
        matrix = stack.pop() ?? matrix
        break
      case OPS.transform:
        matrix = times(matrix, args as Matrix)
        break
      case OPS.setFont:
        font = page.commonObjs.get(args[0]) as LoadedFont
        size = args[1] as number
        break
      case OPS.setTextMatrix:
        line = Array.from(args[0] as ArrayLike<number>) as Matrix
        break
      case OPS.moveText:
        line = times(line, [1, 0, 0, 1, args[0] as number, args[1] as number])
        break
      case OPS.showText: {
        let x = 0
        for (const shown of args[0] as (ShownGlyph | number)[]) {
          if (typeof shown === 'number') continue
          const bounds = font && boundsOf(font, shown)
          const em = times(matrix, times(line, [size, 0, 0, size, x, 0]))
          if (bounds && shown.unicode.trim() !== '')
            ink.glyphs.push({ ...onPage(em, bounds), text: shown.unicode, size: Math.abs(em[3]) * MM_PER_POINT })
          x += size * shown.width * (font?.fontMatrix[0] ?? 0)
        }
        break
      }
      case OPS.constructPath: {
        const bounds = args[2] as ArrayLike<number> | null
        if (!bounds) break
        const box = onPage(matrix, Array.from(bounds))
        if (box.right - box.left >= RULE_LENGTH && box.bottom - box.top <= RULE_WIDTH) ink.rules.push(box)
        break
      }
    }
  }
  return ink
}

/** The drawing's bounds in em. */
function boundsOf(font: LoadedFont, glyph: ShownGlyph): number[] | undefined {
  const drawing = font.charProcOperatorList?.[glyph.operatorListId]
  const bounds = drawing?.argsArray[drawing.fnArray.indexOf(OPS.setCharWidthAndBounds)] as number[] | undefined
  if (!bounds) return undefined
  const [, , left = 0, bottom = 0, right = 0, top = 0] = bounds
  const [scaleX, , , scaleY] = font.fontMatrix
  return [left * scaleX, bottom * scaleY, right * scaleX, top * scaleY]
}

const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
]

const apply = ([a, b, c, d, e, f]: Matrix, x: number, y: number): [number, number] => [a * x + c * y + e, b * x + d * y + f]
