/** What the chosen rule says of itself: for whom, what counts, edition, whom to ask. */
import { lines as frame } from '#content/interface.json';
import { namesAll, ruleSet } from '#core/facts/rule-sets.ts';

export const RuleSheet = ({ chosen, base }: { chosen: string; base: string }) => {
  const set = ruleSet(chosen);
  if (!set) return null;
  const rows: [string, string][] = [
    [frame.rule, set.rule],
    [frame.edition, set.edition],
    [frame.whom, set.whom],
    [frame.counts, `${set.counts.map((part) => frame.parts[part]).join(', ')}${namesAll(set) ? '' : `; ${frame.unnamed}`}`],
    [frame.above, frame.aboveSays[set.above]],
    [frame.movement, frame.movementSays[set.movement]],
    [frame.ask, set.ask],
  ];
  return (
    <section class="rule-sheet held">
      <h2>{set.title}</h2>
      <dl>
        {rows.map(([label, says]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      {set.source && <p><a href={`${base}sources/#source-${set.source}`}>{frame.source}</a></p>}
      {set.notes.length > 0 && <ul>{set.notes.map((note) => <li key={note}>{note}</li>)}</ul>}
    </section>
  );
};
