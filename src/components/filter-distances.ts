/** The filter over the tables of distances: rows, and what each rule says of itself, by words and by how they are known; columns by voltage. */
const of = <E extends HTMLElement>(selector: string): E | null => document.querySelector<E>(selector);
const [find, volt, known, said] = [of<HTMLInputElement>('#find-rule'), of<HTMLSelectElement>('#find-volt'), of<HTMLSelectElement>('#find-known'), of('[data-shown]')];

const filter = (): void => {
  const wanted = find?.value.trim().toLowerCase() ?? '';
  const rows = [...document.querySelectorAll<HTMLElement>('[data-distances] [data-rule]')];
  for (const row of rows) {
    row.hidden = !(row.dataset['rule'] ?? '').includes(wanted) || (known?.value === 'published' && row.dataset['known'] !== 'published');
    // What the rule says of itself goes with its row.
    const entry = document.getElementById(row.dataset['entry'] ?? '');
    if (entry) entry.hidden = row.hidden;
  }
  for (const cell of document.querySelectorAll<HTMLElement>('[data-volt]')) cell.hidden = Boolean(volt?.value) && cell.dataset['volt'] !== volt?.value;
  // Both tables hold the same rules: what is counted is rules, not rows.
  const rules = rows.slice(0, rows.length / 2);
  if (said) said.textContent = (said.dataset['words'] ?? '').replace('{count}', String(rules.filter((row) => !row.hidden).length)).replace('{of}', String(rules.length));
};

for (const field of [find, volt, known]) field?.addEventListener('input', filter);
of<HTMLFormElement>('[data-filter]')?.addEventListener('submit', (event) => event.preventDefault());
filter();
