/** The address of the page on its print: always as text, and as a QR code drawn by a library loaded at the reader's first act. */
type Draw = (into: Element, text: string) => void;
let draw: Draw | undefined;

const fill = () => {
  const [text, code] = [document.querySelector('[data-address]'), document.querySelector('[data-code]')];
  if (text) text.textContent = location.href;
  if (code && draw) draw(code, location.href);
};

const load = () => {
  for (const act of acts) removeEventListener(act, load);
  import('#components/qr.ts').then((library) => (draw = library.draw), () => undefined);
};
const acts = ['keydown', 'pointerdown', 'pointermove', 'scroll'];
for (const act of acts) addEventListener(act, load, { passive: true });
addEventListener('beforeprint', fill);
