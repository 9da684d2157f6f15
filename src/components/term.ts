/**
 * Opens a term's meaning while the mouse rests on it or the keyboard stands on it; a tap needs no script. Escape closes
 * it by itself.
 */
const cardOf = (button: Element) => document.getElementById(button.getAttribute('popovertarget') ?? '');
let wait: ReturnType<typeof setTimeout> | undefined;

for (const button of document.querySelectorAll('.term')) {
  const card = cardOf(button);
  if (!card) continue;
  const later = (act: () => void) => () => {
    clearTimeout(wait);
    wait = setTimeout(act, 150);
  };
  const open = later(() => card.showPopover());
  const close = later(() => {
    if (!card.contains(document.activeElement) && !button.matches(':focus-visible')) card.hidePopover();
  });
  // Pressed, it is the press that opens and closes, not what waited for the mouse to rest.
  button.addEventListener('click', () => clearTimeout(wait));
  button.addEventListener('focus', () => button.matches(':focus-visible') && card.showPopover());
  for (const part of [button, card]) {
    part.addEventListener('focusout', (event) => {
      const to = (event as FocusEvent).relatedTarget;
      if (to !== button && !card.contains(to as Node | null)) card.hidePopover();
    });
    part.addEventListener('pointerenter', (event) => (event as PointerEvent).pointerType === 'mouse' && open());
    part.addEventListener('pointerleave', (event) => (event as PointerEvent).pointerType === 'mouse' && close());
  }
}
