import type { Box, DrawingWords } from '../kit/placed.ts';
import { Sheet } from '../marks/Sheet.tsx';
import { geometry, type Face } from './geometry.ts';

type Props = { id: string; face: Face; box: Box; words: DrawingWords };

export const Drawing = ({ id, face, box, words }: Props) => (
  <Sheet id={id} placed={geometry({ face, labels: words.labels }, box)} words={words} />
);
