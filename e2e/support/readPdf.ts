import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** A page as it comes out of the printer. All lengths in millimetres, from the page's top left corner. */
export interface PdfPage {
  width: number
  height: number
  texts: PdfText[]
  /** The fonts used, without their subset tags: “AtkinsonHyperlegibleNext-Regular”. */
  fonts: string[]
}

/** One run of text in one font and size. */
export interface PdfText {
  text: string
  left: number
  /** Of the baseline. */
  baseline: number
  width: number
  /** Of the em. */
  size: number
  font: string
  /** Height on paper of a flat capital (E, H, T …) at this run's size, from the drawn glyphs; undefined where the file draws none in this font. */
  capitalHeight: number | undefined
}

const MM_PER_POINT = 25.4 / 72
/** Flat at the top and the bottom, so the drawn height is the capital height without overshoot. */
const FLAT_CAPITALS = /[EFHIKLTXZ]/

/** Reads a printed file: page sizes, and every run of text with its place and the size it really has on paper. */
export async function readPdf(file: Uint8Array): Promise<PdfPage[]> {
  // pdf.js keeps the buffer it is given, so it gets one of its own.
  const document = await getDocument({ data: file.slice(), fontExtraProperties: true, verbosity: 0 }).promise
  try {
    const pages = await Promise.all(Array.from({ length: document.numPages }, (_, index) => document.getPage(index + 1)))
    const fonts: Fonts = { names: new Map(), capitals: new Map() }
    for (const page of pages) await addFonts(page, fonts)
    return await Promise.all(pages.map((page) => readPage(page, fonts)))
  } finally {
    await document.loadingTask.destroy()
  }
}

/** The text of a page in one string, runs joined by single spaces. */
export function textOf(page: PdfPage): string {
  const runs = page.texts.map((text) => text.text)
  return runs.join(' ').replace(/\s+/g, ' ').trim()
}

/**
 * The height in millimetres of the capitals of a page's smallest text, lower-case text counted by the capitals it would have.
 *
 * @throws where a run's capitals cannot be measured, which is also the sign of a font that is not ours
 */
export function smallestCapital(page: PdfPage): number {
  const heights = page.texts.map(({ text, font, capitalHeight }) => {
    if (capitalHeight === undefined) throw new Error(`“${text}” is printed in ${font}, whose capitals cannot be measured.`)
    return capitalHeight
  })
  return Math.min(...heights)
}

/** What the file's fonts are called, by pdf.js's ids, and how high their flat capitals are, by name, as a share of the em. */
interface Fonts {
  names: Map<string, string>
  capitals: Map<string, number>
}

async function readPage(page: PDFPageProxy, fonts: Fonts): Promise<PdfPage> {
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view
  const { items } = await page.getTextContent()
  const texts = items.flatMap((item): PdfText[] => {
    if (!('str' in item) || item.str.trim() === '') return []
    const [, , skew, scale, x, y] = item.transform as [number, number, number, number, number, number]
    const size = Math.hypot(skew, scale) * MM_PER_POINT
    const font = fonts.names.get(item.fontName) ?? 'an unknown font'
    const capital = fonts.capitals.get(font)
    return [
      {
        text: item.str,
        left: (x - left) * MM_PER_POINT,
        baseline: (top - y) * MM_PER_POINT,
        width: item.width * MM_PER_POINT,
        size,
        font,
        capitalHeight: capital === undefined ? undefined : capital * size,
      },
    ]
  })
  const used = [...new Set(texts.map((text) => text.font))]
  return { width: (right - left) * MM_PER_POINT, height: (top - bottom) * MM_PER_POINT, texts, fonts: used }
}

/** What pdf.js knows of a font. A variable font is printed as “Type 3”: every glyph is a drawing with its bounds. */
interface LoadedFont {
  name: string
  fontMatrix: number[]
  charProcOperatorList?: Record<string, { fnArray: number[]; argsArray: unknown[][] }>
}

interface Glyph {
  unicode: string
  operatorListId: string
}

async function addFonts(page: PDFPageProxy, fonts: Fonts): Promise<void> {
  const { fnArray, argsArray } = await page.getOperatorList()
  let current: LoadedFont | undefined
  for (const [index, operator] of fnArray.entries()) {
    const [first] = argsArray[index] ?? []
    if (operator === OPS.setFont) {
      current = page.commonObjs.get(first) as LoadedFont
      fonts.names.set(first, plainName(current))
    }
    if (operator !== OPS.showText || !current) continue
    const capital = (first as (Glyph | number)[]).find((shown) => typeof shown === 'object' && FLAT_CAPITALS.test(shown.unicode)) as
      | Glyph
      | undefined
    const height = capital && drawnHeight(current, capital)
    if (height !== undefined) fonts.capitals.set(plainName(current), height)
  }
}

const plainName = (font: LoadedFont) => font.name.replace(/^[A-Z]{6}\+/, '')

/** Height of a glyph as drawn, as a share of the em. */
function drawnHeight(font: LoadedFont, glyph: Glyph): number | undefined {
  const drawing = font.charProcOperatorList?.[glyph.operatorListId]
  const bounds = drawing?.argsArray[drawing.fnArray.indexOf(OPS.setCharWidthAndBounds)] as number[] | undefined
  if (!bounds) return undefined
  const [, , , bottom = 0, , top = 0] = bounds
  return Math.abs((top - bottom) * (font.fontMatrix[3] ?? 0))
}
