import type { Box } from '../kit/placed.ts';
import { useHold } from '../kit/useHold.ts';
import { Live, type LiveProps } from '../marks/Live.tsx';
import { geometry, type Move, type Seen } from './geometry.ts';

type Props = LiveProps<Move> & { seen: Seen; box: Box };

export const Drawing = ({ seen, box, ...live }: Props) => {
  const { held, hold } = useHold();
  return <Live {...live} hold={hold} placed={geometry(seen, { face: 'plan', labels: live.words.labels, held }, box)} />;
};
