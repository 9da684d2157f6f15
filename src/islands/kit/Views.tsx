/** The views of a drawing: on a phone one at a time with a switch, on a wide page all of them. */
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { calculator as frame } from '#content/interface.json';
import type { Box } from '#drawings/kit/placed.ts';

const phone: Box = { width: 358, height: 236 };
const wide: Box = { width: 620, height: 360 };

/** The sheet to draw on. The server draws for a phone; a wide page takes its own once it is there. */
export const useBox = (): Box => {
  const [box, setBox] = useState(phone);
  useEffect(() => {
    const query = matchMedia('(min-width: 60rem)');
    const fit = (): void => setBox(query.matches ? wide : phone);
    fit();
    query.addEventListener('change', fit);
    return () => query.removeEventListener('change', fit);
  }, []);
  return box;
};

type Props<Face extends string> = { faces: readonly Face[]; children: (face: Face, box: Box) => ComponentChildren };

export const Views = <Face extends keyof typeof frame.faces>({ faces, children }: Props<Face>) => {
  const [chosen, setChosen] = useState<Face>(faces[0] as Face);
  const box = useBox();
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
        <div key={face} class={face === chosen ? 'view chosen' : 'view'}>{children(face, box)}</div>
      ))}
    </>
  );
};
