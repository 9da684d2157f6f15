/** Words with figures and facts in them, in both unit systems; the page shows the one chosen. */
import type { ComponentChildren } from 'preact';
import type { AnyCalculator, Values } from '#core/kit/calculator.ts';
import { figureNamed } from '#core/kit/names.ts';
import { showFine, showValue } from '#core/kit/show.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import type { IslandWords } from './words.ts';

export type Speaker = { calculator: AnyCalculator; words: IslandWords; base: string };

/** One text per node in each system, so that server and browser agree on the nodes. */
export const Both = ({ metric, imperial }: { metric: string; imperial: string }) =>
  metric === imperial ? (
    <span>{metric}</span>
  ) : (
    <>
      <span class="metric">{metric}</span>
      <span class="imperial">{imperial}</span>
    </>
  );

/** A named figure as text: choices in their words, quantities by their unit. `fine`: as in a working. */
export const figureText = (speaker: Speaker, name: string, value: Values[string], system: UnitSystem, fine: boolean): string => {
  const { calculator, words } = speaker;
  if (typeof value === 'object') return value.map((item) => figureText(speaker, name, item, system, fine)).join(', ');
  const figure = figureNamed(calculator, name);
  if (figure === null || typeof value === 'string') {
    return words.inputs[name]?.choices?.[value] ?? words.outputs[name]?.choices?.[value] ?? String(value);
  }
  return fine ? showFine(figure, value, system) : showValue(figure, value, system, figure.direction);
};

export const Figure = ({ speaker, name, value, fine }: { speaker: Speaker; name: string; value: Values[string]; fine: boolean }) => (
  <span class="fact">
    <Both metric={figureText(speaker, name, value, 'metric', fine)} imperial={figureText(speaker, name, value, 'imperial', fine)} />
  </span>
);

const Fact = ({ token, base }: { token: string; base: string }) => {
  const [metric = '', imperial = '', id = '', mark = '', says = ''] = token.split('|');
  return (
    <span class="fact">
      <Both metric={metric} imperial={imperial} />
      <a class="mark" href={`${base}sources/#fact-${id}`} title={says}>
        <span aria-hidden="true">{mark}</span>
        <span class="only-read">{` (${says})`}</span>
      </a>
    </span>
  );
};

/**
 * Fills `{name}` with figures and `{=…}` with facts. A name without a value is shown by its label. No text node is
 * empty or beside another: the browser would make of them other nodes than the server's.
 */
export const Say = ({ speaker, text, values = {}, fine = false }: { speaker: Speaker; text: string; values?: Values; fine?: boolean }) => (
  <>
    {text.split(/(\{[^{}]+\})/).map((part, i): ComponentChildren => {
      if (i % 2 === 0) return part || null;
      const name = part.slice(1, -1);
      if (name.startsWith('=')) return <Fact key={i} token={name.slice(1)} base={speaker.base} />;
      const value = values[name];
      return value === undefined ? <span key={i}>{labelOf(speaker.words, name)}</span> : <Figure key={i} speaker={speaker} name={name} value={value} fine={fine} />;
    })}
  </>
);

export const labelOf = (words: IslandWords, name: string): string =>
  words.inputs[name]?.label ?? words.outputs[name]?.label ?? words.middle[name] ?? name;

/** Words as one plain text in one unit system, for attributes and messages. */
export const plain = (speaker: Speaker, text: string, values: Values, system: UnitSystem): string =>
  text.replace(/\{([^{}]+)\}/g, (_, name: string) => {
    if (name.startsWith('=')) return name.slice(1).split('|')[system === 'metric' ? 0 : 1] ?? '';
    const value = values[name];
    return value === undefined ? labelOf(speaker.words, name) : figureText(speaker, name, value, system, false);
  });
