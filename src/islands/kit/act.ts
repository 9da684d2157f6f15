/**
 * `client:act`: an island comes alive at the reader's first act, not before, so that a page opens in what it takes to read
 * it. At once where a link or the reader's units ask for other figures than the server's, where the device keeps what the
 * island shows (`client:act="the name it is kept under"`), and where the edition is on the device already and costs nothing. What is typed or clicked meanwhile is not lost: fields are read when the island takes
 * over (see typed.ts), a button pressed is pressed again, a usual value picked from a list is picked again.
 */
import type { ClientDirective } from 'astro';

const acts = ['pointerdown', 'pointermove', 'touchstart', 'keydown', 'focusin', 'scroll', 'wheel'] as const;
const { dataset } = document.documentElement;

const isKept = (name: string): boolean => {
  try {
    return localStorage.getItem(name) !== null;
  } catch {
    return false;
  }
};

/** What the page as the server made it does not show. */
const asksAtOnce = (name: unknown): boolean =>
  (typeof name === 'string' && isKept(name)) || location.search !== '' || location.hash !== '' || dataset['units'] === 'imperial' || Boolean(navigator.serviceWorker?.controller);

const act: ClientDirective = (load, { value }, island) => {
  let pressed: HTMLElement | null = null;
  const press = (event: Event): void => {
    pressed = (event.target as Element).closest<HTMLElement>('button');
  };
  // Lists that hold a field of their own are read with the fields; the others only say what goes into one.
  const picked = new Set<HTMLSelectElement>();
  const pick = ({ target }: Event): void => {
    if (target instanceof HTMLSelectElement && !target.id) picked.add(target);
  };
  const wait = (): void => acts.forEach((name) => addEventListener(name, begin, { capture: true, passive: true }));
  const begin = async (): Promise<void> => {
    acts.forEach((name) => removeEventListener(name, begin, true));
    island.addEventListener('click', press);
    island.addEventListener('change', pick);
    try {
      const hydrate = await load();
      await hydrate();
    } catch {
      // No signal just now: the next act tries again.
      wait();
      return;
    } finally {
      island.removeEventListener('click', press);
      island.removeEventListener('change', pick);
    }
    for (const list of picked) if (list.isConnected) list.dispatchEvent(new Event('change'));
    if (pressed?.isConnected) pressed.click();
  };
  if (asksAtOnce(value)) void begin();
  else wait();
};

export default act;
