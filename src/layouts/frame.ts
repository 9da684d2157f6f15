/** What moves in the frame of every page: the switches for units and light, and what opens search. Nothing else is loaded. */
import { onChange, set, settings, storageRefused, type Settings } from '#device/settings.ts';

const switches = [...document.querySelectorAll<HTMLFieldSetElement>('[data-setting]')];

const show = (now: Settings) => {
  for (const fieldset of switches) {
    const chosen = now[fieldset.dataset['setting'] as 'units' | 'theme'];
    for (const radio of fieldset.querySelectorAll('input')) radio.checked = radio.value === chosen;
  }
  const refused = document.querySelector<HTMLElement>('[data-refused]');
  if (refused) refused.hidden = !storageRefused();
};

for (const fieldset of switches) {
  fieldset.addEventListener('change', (event) => {
    set({ [fieldset.dataset['setting'] as string]: (event.target as HTMLInputElement).value });
  });
}
onChange(show);
show(settings());

const openSearch = () => import('#components/search/dialog.ts').then(({ open }) => open());
document.addEventListener('click', (event) => {
  if ((event.target as Element).closest('[data-search]')) void openSearch();
});
document.addEventListener('keydown', (event) => {
  const typing = (event.target as Element).closest('input:not([type="radio"]), textarea, select, [contenteditable]');
  // A field that has just been closed away may keep the focus for a moment.
  if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey || typing?.checkVisibility()) return;
  event.preventDefault();
  void openSearch();
});
