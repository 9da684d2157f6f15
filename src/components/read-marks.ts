/** Shows in lists of chapters which ones were read to the end on this device. */
import { progress } from '#device/progress.ts';

const { done } = progress();
for (const link of document.querySelectorAll<HTMLElement>('[data-chapter]')) {
  const mark = link.querySelector<HTMLElement>('.done');
  if (mark && done.includes(link.dataset['chapter'] ?? '')) mark.hidden = false;
}
