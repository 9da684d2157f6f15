/** Opens a term's meaning while the mouse rests on it; tap and keyboard need no script. Escape closes it by itself. */
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
    if (!card.contains(document.activeElement)) card.hidePopover();
  });
  for (const part of [button, card]) {
    part.addEventListener('pointerenter', (event) => (event as PointerEvent).pointerType === 'mouse' && open());
    part.addEventListener('pointerleave', (event) => (event as PointerEvent).pointerType === 'mouse' && close());
  }
}
