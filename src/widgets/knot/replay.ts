import { type Accessor, createSignal, onCleanup } from 'solid-js';
import { type NamedMoment, replayed, stopAfter } from '../../figures/strand/index.ts';

/** The longest time between two frames that counts, in seconds: a page that was out of sight goes on where it was. */
const LONGEST_FRAME = 0.1;
/** Seconds that each stage stands, where nothing is to move. */
const STILL = 4;

export interface Replay {
  readonly playing: Accessor<boolean>;
  readonly play: () => void;
  readonly pause: () => void;
}

/**
 * Plays a tying slowly from where it stands; from its start if it stands at the end. Where motion is unwelcome it shows
 * one stopping point after another, and nothing between.
 */
export function createReplay(
  stops: Accessor<readonly NamedMoment[]>,
  moment: Accessor<number>,
  show: (moment: number) => void,
  still: Accessor<boolean>,
): Replay {
  const [playing, setPlaying] = createSignal(false);
  let frame = 0;
  let timer = 0;
  const pause = () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
    setPlaying(false);
  };
  const flow = () => {
    const from = moment();
    let [seconds, last] = [0, performance.now()];
    const next = (now: number) => {
      seconds += Math.min(LONGEST_FRAME, (now - last) / 1000);
      last = now;
      const { t, over } = replayed(stops(), from, seconds);
      show(t);
      if (over) pause();
      else frame = requestAnimationFrame(next);
    };
    frame = requestAnimationFrame(next);
  };
  const stepOn = () => {
    timer = window.setTimeout(() => {
      show(stopAfter(stops(), moment()));
      if (moment() < 1) stepOn();
      else pause();
    }, STILL * 1000);
  };
  const play = () => {
    if (moment() >= 1) show(0);
    setPlaying(true);
    if (still()) stepOn();
    else flow();
  };
  onCleanup(pause);
  return { playing, play, pause };
}
