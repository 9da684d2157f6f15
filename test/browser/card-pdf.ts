/** Measures a card's PDF file with general-purpose libraries; lengths in mm. */
import { PDFDocument, PDFRawStream, decodePDFRawStream, PDFArray } from 'pdf-lib';
import { extractText, getDocumentProxy } from 'unpdf';

const point = 25.4 / 72;
export type CardPdf = { pages: { width: number; height: number }[]; text: string; /** points */ smallest: number };

export const readCardPdf = async (pdf: Buffer): Promise<CardPdf> => {
  const document = await getDocumentProxy(new Uint8Array(pdf));
  const { text } = await extractText(document, { mergePages: true });
  const pages: CardPdf['pages'] = [];
  let smallest = Infinity;
  for (let k = 1; k <= document.numPages; k++) {
    const page = await document.getPage(k);
    const { width, height } = page.getViewport({ scale: 1 });
    pages.push({ width: width * point, height: height * point });
    for (const item of (await page.getTextContent()).items) {
      if ('transform' in item && item.str.trim() !== '') smallest = Math.min(smallest, Math.hypot(item.transform[2], item.transform[3]));
    }
  }
  return { pages, text, smallest };
};

/** Where the cut marks of the first page of our own file stand: the edges of the cards, from left to right and from top to bottom. */
export const cutsIn = async (pdf: Buffer): Promise<{ across: number[]; down: number[] }> => {
  const page = (await PDFDocument.load(new Uint8Array(pdf))).getPage(0);
  const contents = page.node.Contents();
  const streams = contents instanceof PDFArray ? contents.asArray().map((ref) => page.doc.context.lookup(ref)) : [contents];
  const text = streams.map((stream) => Buffer.from(decodePDFRawStream(stream as PDFRawStream).decode()).toString('latin1')).join('\n');
  const mm = (n: string): number => Number(n) * point;
  const [across, down] = [new Set<string>(), new Set<string>()];
  // A mark is one straight line of three millimetres, the thinnest on the sheet.
  for (const [, weight, x1, y1, x2, y2] of text.matchAll(/([\d.]+) w\b[^S]*?([\d.-]+) ([\d.-]+) m\s+([\d.-]+) ([\d.-]+) l\s+S/g)) {
    if (Math.abs(mm(weight!) - 0.1) > 0.001) continue;
    if (x1 === x2) across.add(mm(x1!).toFixed(2));
    if (y1 === y2) down.add(mm(y1!).toFixed(2));
  }
  const sorted = (all: Set<string>): number[] => [...all].map(Number).sort((a, b) => a - b);
  return { across: sorted(across), down: sorted(down) };
};
