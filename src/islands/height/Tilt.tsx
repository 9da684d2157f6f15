/** "Use the tilt of this phone": asks for leave only when it is pressed, takes the average of a steady second. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { calculator as frame } from '#content/interface.json';
import { showValue } from '#core/kit/show.ts';
import { type Reading, recent, riseOfEdge, steady } from './tilt.ts';

const words = frame.tilt;
const patience = 8000;

type WithLeave = typeof DeviceOrientationEvent & { requestPermission?: () => Promise<'granted' | 'denied'> };
type Props = { label: string; onAngle: (angle: number) => void };

const degrees = (angle: number): string => showValue({ unit: 'deg', step: 0.1 }, angle, 'metric');

export const Tilt = ({ label, onAngle }: Props) => {
  const [said, setSaid] = useState('');
  const stop = useRef<() => void>(() => undefined);
  useEffect(() => () => stop.current(), []);

  const listen = (): void => {
    let readings: Reading[] = [];
    const onReading = ({ beta }: DeviceOrientationEvent): void => {
      if (beta === null) return;
      const at = performance.now();
      readings = recent([...readings, { at, angle: riseOfEdge(beta) }], at);
      const found = steady(readings);
      if (!found) {
        setSaid(words.hold.replace('{angle}', degrees(riseOfEdge(beta))));
        return;
      }
      stop.current();
      onAngle(Math.round(found.angle * 2) / 2);
      setSaid(words.taken.replace('{angle}', degrees(found.angle)).replace('{spread}', degrees(Math.max(found.spread, 0.1))));
    };
    const late = setTimeout(() => {
      stop.current();
      setSaid(readings.length === 0 ? words.none : words.unsteady);
    }, patience);
    stop.current = () => {
      clearTimeout(late);
      removeEventListener('deviceorientation', onReading);
    };
    addEventListener('deviceorientation', onReading);
    setSaid(words.start);
  };
  const ask = async (): Promise<void> => {
    stop.current();
    if (typeof DeviceOrientationEvent === 'undefined') {
      setSaid(words.none);
      return;
    }
    const { requestPermission } = DeviceOrientationEvent as WithLeave;
    try {
      // Safari asks the reader; the method needs its object.
      const leave = requestPermission ? await requestPermission.call(DeviceOrientationEvent) : 'granted';
      if (leave === 'granted') listen();
      else setSaid(words.refused);
    } catch {
      setSaid(words.refused);
    }
  };
  return (
    <span class="tilt needs-script no-print">
      <button type="button" aria-label={`${label}: ${words.use}`} onClick={() => void ask()}>{words.use}</button>
      <span role="status">{said || null}</span>
    </span>
  );
};
