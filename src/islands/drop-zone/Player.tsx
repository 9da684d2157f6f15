/** Steps through the worst fall of either way, moment by moment; plays it where motion is welcome. */
import { useEffect, useState } from 'preact/hooks';
import { lastPose } from '#drawings/drop-zone/scene.ts';
import type { Moment } from '#drawings/drop-zone/geometry.ts';

type Words = { inward: string; outward: string; back: string; on: string; play: string; stop: string; start: string; legend: string };
type Props = { words: Words; moment: Moment | null; onMoment: (moment: Moment | null) => void };

const pace = 160;

export const Player = ({ words, moment, onMoment }: Props) => {
  const [plays, setPlays] = useState(false);
  const at = moment?.at ?? 0;
  const way = moment?.way ?? 'inward';
  const to = (next: number, which = way): void => onMoment(next <= 0 ? null : { way: which, at: Math.min(next, lastPose) });
  useEffect(() => {
    if (!plays) return;
    if (at >= lastPose) return setPlays(false);
    const later = setTimeout(() => to(at + 1), pace);
    return () => clearTimeout(later);
  }, [plays, at, way]);
  const play = (): void => {
    // Motion not welcome: straight to where it lies.
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) return to(lastPose);
    if (at >= lastPose) onMoment(null);
    setPlays(!plays);
  };
  return (
    <fieldset class="choices player needs-script">
      <legend class="only-read">{words.legend}</legend>
      {(['inward', 'outward'] as const).map((which) => (
        <label key={which}>
          <input type="radio" name="fall-way" checked={way === which} onChange={() => onMoment({ way: which, at: Math.max(at, 1) })} />
          <span>{words[which]}</span>
        </label>
      ))}
      <button type="button" disabled={at <= 0} onClick={() => to(at - 1)}>{words.back}</button>
      <button type="button" disabled={at >= lastPose} onClick={() => to(at + 1)}>{words.on}</button>
      <button type="button" onClick={play}>{plays ? words.stop : words.play}</button>
    </fieldset>
  );
};
