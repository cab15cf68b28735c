import Aside from './Aside.astro';
import Caution from './Caution.astro';
import Checklist from './Checklist.astro';
import Exercise from './Exercise.astro';
import Figure from './Figure.astro';
import FrameHere from './FrameHere.astro';
import Knot from './Knot.astro';
import Length from './Length.astro';
import Motion from './Motion.astro';
import N from './N.astro';
import Plate from './Plate.astro';
import ReadersOnly from './ReadersOnly.astro';
import Ring from './Ring.astro';
import RoomOnly from './RoomOnly.astro';
import Slip from './Slip.astro';
import SpeakerNotes from './SpeakerNotes.astro';
import Term from './Term.astro';
import TryIt from './TryIt.astro';
import When from './When.astro';

/** The blocks that a lesson may use by name, without importing anything. A new block is one more line. */
export const BLOCKS = {
  Aside,
  Caution,
  Checklist,
  Exercise,
  Figure,
  FrameHere,
  Knot,
  Length,
  Motion,
  N,
  Plate,
  ReadersOnly,
  Ring,
  RoomOnly,
  Slip,
  SpeakerNotes,
  Term,
  TryIt,
  When,
};
