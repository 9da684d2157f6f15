/** At the foot of a chapter opened as one of several: the next of them instead of the next in the book. */
import { sequence, stillToCome } from './sequence.ts';

const nav = document.querySelector<HTMLElement>('.next-previous');
const [first, ...rest] = stillToCome(location.search);
if (nav && first) {
  const link = nav.querySelector<HTMLAnchorElement>('.next') ?? nav.appendChild(document.createElement('a'));
  link.className = 'next';
  link.href = sequence([first, ...rest]).replace('/chapters/', '../');
  const small = document.createElement('small');
  small.textContent = nav.dataset['then'] ?? '';
  link.replaceChildren(small, first.replaceAll('-', ' ').replace(/^./, (letter) => letter.toUpperCase()));
}
