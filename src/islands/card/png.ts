/** A side as a picture for the lock screen of a phone. */
import type { Side } from '#core/card/layout.ts';
import { point } from '#core/card/type.ts';
import { faces } from './Svg.tsx';

/** px a mm: three hundred to the inch. */
const density = 300 / 25.4;

/** Null where the browser makes no picture. */
export const pngOf = ({ width, height, placed }: Side): Promise<Blob | null> => {
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * density);
  canvas.height = Math.round(height * density);
  const pen = canvas.getContext('2d');
  if (!pen) return Promise.resolve(null);
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.scale(density, density);
  pen.lineJoin = 'round';
  for (const p of placed) {
    if (p.kind === 'type') {
      pen.save();
      pen.fillStyle = '#000';
      // Set ten times as large, so that no browser rounds the size of type.
      pen.font = `${p.strong ? 700 : 400} ${p.size * point * 10}px ${faces}`;
      pen.translate(p.x, p.y);
      pen.scale(p.width / pen.measureText(p.text).width, 0.1);
      pen.fillText(p.text, 0, 0);
      pen.restore();
      continue;
    }
    const path = new Path2D();
    p.points.forEach(([x, y], i) => (i === 0 ? path.moveTo(x, y) : path.lineTo(x, y)));
    if (p.closed) path.closePath();
    if (p.fill !== 'none') {
      pen.fillStyle = p.fill === 'ink' ? '#000' : '#fff';
      pen.fill(path);
    }
    if (p.weight > 0) {
      pen.lineWidth = p.weight;
      pen.setLineDash([...(p.dash ?? [])]);
      pen.strokeStyle = '#000';
      pen.stroke(path);
    }
  }
  return new Promise((done) => canvas.toBlob(done, 'image/png'));
};
