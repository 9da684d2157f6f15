/**
 * The numbers of the sheets in the contents. A browser that lays the page out for paper puts all sheets under one
 * another and tells us so while it does; each part begins a sheet, which gives their height and proves it. Where a
 * browser does not, the numbers stay blank, and the numbers of chapters and sections lead.
 */
const topOf = (element: Element): number => element.getBoundingClientRect().top + scrollY;

/** The height of a sheet, px; null where the parts do not begin on sheets of one height. */
const sheetHeight = (): number | null => {
  const tops = [...document.querySelectorAll('.book-part')].map(topOf);
  const last = tops.at(-1) ?? 0;
  const height = last / Math.round(last / document.documentElement.clientHeight);
  return tops.every((top) => top > 0 && Math.abs(top / height - Math.round(top / height)) < 0.01) ? height : null;
};

const number = (): void => {
  const height = sheetHeight();
  for (const place of document.querySelectorAll<HTMLElement>('[data-sheet-of]')) {
    const target = document.getElementById(place.dataset['sheetOf'] ?? '');
    place.textContent = height && target ? String(Math.floor((topOf(target) + 1) / height) + 1) : '';
  }
};

matchMedia('print').addEventListener('change', ({ matches }) => {
  if (matches) number();
});
