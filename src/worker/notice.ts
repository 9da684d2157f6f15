/** What the handbook says about itself at the foot of a page: how far it is kept, a new edition, a question first. */
import { offline } from '#content/interface.json';
import styles from '#styles/notice.css?url&no-inline';

const QUIET_AFTER = 4000;
const ASKED = 'standing-clear.asked';

const look = document.createElement('link');
look.rel = 'stylesheet';
look.href = styles;
document.head.append(look);
const box = document.createElement('aside');
box.className = 'notice';
box.setAttribute('aria-label', offline.title);
const text = document.createElement('p');
text.setAttribute('role', 'status');
const bar = document.createElement('progress');
bar.setAttribute('aria-label', offline.title);
const buttons = document.createElement('p');
buttons.className = 'notice-buttons';
box.append(text, bar, buttons);

const hide = () => box.remove();
const say = (message: string, progress: boolean, choices: [string, () => void][]) => {
  if (text.textContent !== message) text.textContent = message;
  bar.hidden = !progress;
  buttons.replaceChildren(
    ...choices.map(([label, act]) => {
      const button = document.createElement('button');
      button.type = 'button';
      button.textContent = label;
      button.addEventListener('click', () => {
        hide();
        act();
      });
      return button;
    }),
  );
  buttons.hidden = choices.length === 0;
  if (!box.isConnected) document.body.append(box);
};

/** A page that shows the fetching itself (`/offline/`) carries `data-shows-keeping`. */
const elsewhere = () => document.querySelector('[data-shows-keeping]') !== null;

let offered = false;
export const showProgress = (done: number, total: number): void => {
  if (offered || elsewhere()) return;
  bar.max = total;
  bar.value = done;
  if (done < total) return say(offline.title, true, []);
  say(offline.filled, false, [[offline.close, () => undefined]]);
  setTimeout(() => {
    if (!offered) hide();
  }, QUIET_AFTER);
};

export const offer = (take: () => void): void => {
  if (elsewhere()) return;
  offered = true;
  say(offline.offer, false, [[offline.offerTake, take], [offline.later, () => undefined]]);
};

/** Asks once a visit; "not now" holds until the browser is closed. */
export const askFirst = (keep: () => void): void => {
  try {
    if (sessionStorage.getItem(ASKED) || elsewhere()) return;
    sessionStorage.setItem(ASKED, 'yes');
  } catch {
    // Storage refused: the question comes again on the next page.
  }
  say(offline.saving, false, [[offline.savingKeep, keep], [offline.later, () => undefined]]);
};
