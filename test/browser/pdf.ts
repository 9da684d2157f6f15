/** Reads what Chromium printed. */
import { extractText, getDocumentProxy } from 'unpdf';

export type Sheet = { width: number; height: number; words: number; text: string };

/** @returns the sheets of a PDF with their size in points and number of words, and all text */
export const readPdf = async (pdf: Buffer): Promise<{ pages: Sheet[]; text: string }> => {
  const document = await getDocumentProxy(new Uint8Array(pdf));
  const { text } = await extractText(document, { mergePages: false });
  const pages = await Promise.all(
    text.map(async (words, place) => {
      const { width, height } = (await document.getPage(place + 1)).getViewport({ scale: 1 });
      return { width, height, words: words.split(/\s+/).filter(Boolean).length, text: words };
    }),
  );
  return { pages, text: text.join('\n') };
};
