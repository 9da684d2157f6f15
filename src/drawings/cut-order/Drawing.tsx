import type { Outcome } from '#core/kit/outcome.ts';
import type { Box } from '../kit/placed.ts';
import { useHold } from '../kit/useHold.ts';
import { Live, type LiveProps } from '../marks/Live.tsx';
import { geometry, type Face, type Inputs, type Move } from './geometry.ts';

type Props = LiveProps<Move> & { face: Face; inputs: Inputs; outcome: Outcome; box: Box };

export const Drawing = ({ face, inputs, outcome, box, ...live }: Props) => {
  const { held, hold } = useHold();
  return <Live {...live} hold={hold} placed={geometry(inputs, outcome, { face, labels: live.words.labels, held }, box)} />;
};
