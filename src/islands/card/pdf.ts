/** A PDF file made on the device: lines and real type in the standard faces. Loaded when the reader saves, not before. */
import { grayscale, PDFDocument, type PDFPage, StandardFonts } from 'pdf-lib';
import type { Placed } from '#core/card/place.ts';
import type { Page } from '#core/card/sheets.ts';
import { point } from '#core/card/type.ts';

const black = grayscale(0);
const white = grayscale(1);
const pt = (mm: number): number => mm / point;

const draw = (page: PDFPage, height: number, p: Placed, fonts: { plain: Parameters<PDFPage['setFont']>[0]; strong: Parameters<PDFPage['setFont']>[0] }): void => {
  if (p.kind === 'type') {
    page.drawText(p.text, { x: pt(p.x), y: pt(height - p.y), size: p.size, font: p.strong ? fonts.strong : fonts.plain, color: black });
    return;
  }
  // Its origin is the page's top left, y downwards, as the layout's is.
  const path = `M${p.points.map(([x, y]) => `${pt(x).toFixed(3)} ${pt(y).toFixed(3)}`).join('L')}${p.closed ? 'Z' : ''}`;
  page.drawSvgPath(path, {
    x: 0, y: pt(height),
    ...(p.fill === 'none' ? {} : { color: p.fill === 'ink' ? black : white }),
    ...(p.weight > 0 ? { borderColor: black, borderWidth: pt(p.weight) } : {}),
    ...(p.dash ? { borderDashArray: p.dash.map(pt) } : {}),
  });
};

/** @returns the bytes of the file, a page for each of `pages`, in their sizes */
export const pdfOf = async (pages: readonly Page[], title: string): Promise<Uint8Array> => {
  const file = await PDFDocument.create();
  file.setTitle(title, { showInWindowTitleBar: true });
  file.setLanguage('en');
  const fonts = { plain: await file.embedFont(StandardFonts.Helvetica), strong: await file.embedFont(StandardFonts.HelveticaBold) };
  for (const { width, height, placed } of pages) {
    const page = file.addPage([pt(width), pt(height)]);
    for (const p of placed) draw(page, height, p, fonts);
  }
  return file.save();
};
