/** A QR code (ISO/IEC 18004) as SVG, dark on light whatever the theme, with the quiet zone of four modules around it. */
import { encode } from 'uqr';

const svg = 'http://www.w3.org/2000/svg';
const quiet = 4;

/** One path for all dark modules, a run of them in a row at a time. */
export const path = (modules: readonly (readonly boolean[])[]): string =>
  modules
    .flatMap((row, y) => [...row.map((dark) => (dark ? '1' : '0')).join('').matchAll(/1+/g)].map(({ 0: run, index }) => `M${index + quiet} ${y + quiet}h${run.length}v1h-${run.length}z`))
    .join('');

/** Draws `text` into `into`, in place of what was there. A text too long for a code leaves it empty. */
export const draw = (into: Element, text: string): void => {
  into.replaceChildren();
  let modules: boolean[][];
  try {
    modules = encode(text, { ecc: 'M', border: 0 }).data;
  } catch {
    return;
  }
  const size = modules.length + 2 * quiet;
  const drawn = document.createElementNS(svg, 'svg');
  const attributes = { viewBox: `0 0 ${size} ${size}`, class: 'qr', 'aria-hidden': 'true', 'shape-rendering': 'crispEdges' };
  for (const [name, value] of Object.entries(attributes)) drawn.setAttribute(name, value);
  for (const [name, d] of [['qr-light', `M0 0h${size}v${size}h-${size}z`], ['qr-dark', path(modules)]] as const) {
    const part = document.createElementNS(svg, 'path');
    part.setAttribute('class', name);
    part.setAttribute('d', d);
    drawn.append(part);
  }
  into.append(drawn);
};
