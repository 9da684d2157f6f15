/** The sheet as a PDF file made on the device; what makes it is loaded when it is asked for. */
import { useState } from 'preact/hooks';
import { site as frame } from '#content/interface.json';
import planWords from '#content/drawings/plan.json';
import { site } from '#device/site.ts';
import { geometry } from '#drawings/plan/geometry.ts';
import { saveFile } from '../kit/save-file.ts';
import { planRows } from './figures.ts';
import { sheetOf } from './sheet.ts';
import type { Paper } from './sheet-pages.ts';
import type { PlanState } from './usePlan.ts';
import { fillIn, type PlanProps } from './words.ts';

export const SavePdf = ({ props, state }: { props: PlanProps; state: PlanState }) => {
  const [said, setSaid] = useState('');
  const { words } = props;
  const make = async (paper: Paper): Promise<void> => {
    const good = state.good;
    if (!good) return;
    setSaid(words.sheet.saving);
    try {
      const [{ sheetPages, cannotSet }, { pdfOf }] = await Promise.all([import('./sheet-pages.ts'), import('../card/pdf.ts')]);
      const { plan, work } = good;
      const sheet = sheetOf(props, plan, work, site());
      const sign = cannotSet([plan.name, ...sheet.limbs, ...sheet.lines.map(({ text }) => text), ...[...sheet.stops, ...sheet.cautions].map((text) => text[state.system])]);
      if (sign !== null) return setSaid(fillIn(words.sheet.noSign, { sign }));
      const drawn = geometry({ plan, work, chosen: null }, { face: 'plan', labels: planWords.labels }, { width: 358, height: 300 });
      const pages = sheetPages({
        title: plan.name, invented: plan.demo ? words.invented : '', sheet, drawn, words, system: state.system,
        plan: planRows(props, work, plan.facts.movement.value).map(({ label, text }) => ({ label, text: text[state.system] })),
        foot: `${frame.name}, ${document.querySelector('footer .edition-id')?.textContent ?? ''}`,
      }, paper);
      saveFile(new Blob([(await pdfOf(pages, plan.name)) as Uint8Array<ArrayBuffer>], { type: 'application/pdf' }), words.sheet.file);
      setSaid(words.sheet.saved);
    } catch {
      setSaid(words.sheet.failed);
    }
  };
  return (
    <>
      <p class="actions">
        <button type="button" onClick={() => print()}>{words.sheet.print}</button>
        <button type="button" disabled={!state.current} onClick={() => void make('a4')}>{words.sheet.saveA4}</button>
        <button type="button" disabled={!state.current} onClick={() => void make('letter')}>{words.sheet.saveLetter}</button>
      </p>
      <p role="status">{said || null}</p>
    </>
  );
};
