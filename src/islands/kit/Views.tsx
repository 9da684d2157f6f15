/** The views of a drawing: on a phone one at a time with a switch, on a wide page all of them. */
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { calculator as frame } from '#content/interface.json';
import type { Outcome } from '#core/kit/outcome.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import type { Box, DrawingWords } from '#drawings/kit/placed.ts';
import type { Drawn } from './Calculator.tsx';
import { Rested } from './Kept.tsx';

const phone: Box = { width: 358, height: 236 };
const wide: Box = { width: 620, height: 360 };

/** Whether inputs and drawing stand side by side. The server draws for a phone; a wide page finds out once it is there. */
export const useWide = (): boolean => {
  const [isWide, setIsWide] = useState(false);
  useEffect(() => {
    const query = matchMedia('(min-width: 60rem)');
    const fit = (): void => setIsWide(query.matches);
    fit();
    query.addEventListener('change', fit);
    return () => query.removeEventListener('change', fit);
  }, []);
  return isWide;
};
/** The sheet to draw on. */
export const useBox = (): Box => (useWide() ? wide : phone);

/** What every drawing takes the same. */
export type Common = { id: string; box: Box; words: DrawingWords; quiet: boolean; units: UnitSystem; outcome: Outcome };
type Words<Face extends string> = { title: string; views: Readonly<Record<Face, string>>; labels: Readonly<Record<string, string>> };
type Props<Face extends string> = {
  /** The drawing's id; the views' ids on the page follow from it. */
  of: string;
  faces: readonly Face[];
  words: Words<Face>;
  drawn: Drawn;
  units: UnitSystem;
  children: (face: Face, common: Common) => ComponentChildren;
};

export const Views = <Face extends keyof typeof frame.faces>({ of, faces, words, drawn, units, children }: Props<Face>) => {
  const [chosen, setChosen] = useState<Face>(faces[0] as Face);
  const box = useBox();
  const common = (face: Face): Common => ({
    id: `${of}-${face}`,
    box,
    words: { title: words.title, description: `${drawn.description} ${words.views[face]}`, labels: words.labels },
    quiet: drawn.quiet,
    units,
    outcome: drawn.good.outcome,
  });
  return (
    <>
      {faces.length > 1 && (
        <div class="choices view-switch needs-script">
          {faces.map((face) => (
            <label key={face}>
              <input type="radio" name="view" checked={face === chosen} onChange={() => setChosen(face)} />
              <span>{frame.faces[face]}</span>
            </label>
          ))}
        </div>
      )}
      {faces.map((face) => (
        <div key={face} class={face === chosen ? 'view chosen' : 'view'}>
          {face === chosen || box === wide ? children(face, common(face)) : <Rested>{children(face, common(face))}</Rested>}
        </div>
      ))}
    </>
  );
};
