/** Print, save as a file or as pictures, copy the link. What makes the file is loaded when it is asked for. */
import { useState } from 'preact/hooks';
import words from '#content/cards/card.json';
import type { Side } from '#core/card/layout.ts';
import type { Page } from '#core/card/sheets.ts';
import { sideName } from './Pages.tsx';
import { saveFile } from '../kit/save-file.ts';
import { pngOf } from './png.ts';

type Props = { sides: readonly Side[]; pages: readonly Page[]; ready: boolean; address: string };

export const Output = ({ sides, pages, ready, address }: Props) => {
  const [said, setSaid] = useState('');
  const pdf = async (): Promise<void> => {
    setSaid(words.making);
    try {
      const { pdfOf } = await import('./pdf.ts');
      const bytes = await pdfOf(pages, words.title);
      saveFile(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/pdf' }), `${words.file}.pdf`);
      setSaid('');
    } catch {
      setSaid(words.pdfFailed);
    }
  };
  const picture = async (k: number): Promise<void> => {
    const blob = await pngOf(sides[k] as Side);
    if (blob) saveFile(blob, `${words.file}-${k + 1}.png`);
    else setSaid(words.pdfFailed);
  };
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(address);
      setSaid(words.copied);
    } catch {
      history.replaceState(history.state, '', address);
      setSaid(words.copyFailed);
    }
  };
  return (
    <>
      <h2>{words.output}</h2>
      <p class="soft">{words.printHint}</p>
      <p class="card-buttons">
        <button type="button" disabled={!ready} onClick={() => print()}>{words.print}</button>
        <button type="button" disabled={!ready} onClick={() => void pdf()}>{words.pdf}</button>
        {sides.map((_, k) => (
          <button key={k} type="button" disabled={!ready} onClick={() => void picture(k)}>{words.picture.replace('{side}', sideName(k).toLowerCase())}</button>
        ))}
        <button type="button" onClick={() => void copy()}>{words.copy}</button>
      </p>
      <p role="status">{said || null}</p>
    </>
  );
};
