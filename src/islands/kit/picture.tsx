/**
 * The drawing of a calculator, loaded at the reader's first act. Until then the page shows the one the server drew of the
 * example; with a link's figures it waits unseen. Its code is the larger part of some pages, and not needed to read one.
 */
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { CalculatorState, Good } from './useCalculator.ts';

/**
 * What a picture is given: the last good state (quiet while a field is in trouble), its description, and a way back for
 * its handles. A still has no handles.
 */
export type Drawn = { good: Good; quiet: boolean; description: string; state: CalculatorState; onInput: CalculatorState['setInputs'] | undefined };
export type Picture = ComponentType<{ now: Drawn }>;
/** `still`: on the server alone. */
export type PictureSource = { still: Picture | null; load: () => Promise<{ default: Picture }> };

const acts = ['pointerdown', 'pointermove', 'touchstart', 'keydown', 'focusin', 'scroll', 'wheel'] as const;

/** Calls back once, at the first thing the reader does; returns how to stop waiting. */
export const onFirstAct = (then: () => void): (() => void) => {
  const stop = (): void => acts.forEach((act) => removeEventListener(act, go, true));
  const go = (): void => {
    stop();
    then();
  };
  acts.forEach((act) => addEventListener(act, go, { capture: true, passive: true }));
  return stop;
};

/** The picture once it is loaded; `now` asks for it at once, as a link's figures do. */
export const usePicture = ({ load }: PictureSource, now: boolean): Picture | null => {
  const [picture, setPicture] = useState<{ of: Picture } | null>(null);
  useEffect(() => {
    const fetchIt = (): void => void load().then((module) => setPicture({ of: module.default }));
    if (!now) return onFirstAct(fetchIt);
    fetchIt();
    return undefined;
  }, [load, now]);
  return picture?.of ?? null;
};
