import type { JSX } from 'solid-js';
import { INCH } from '../solver/inch.ts';
import { measureProblem, type Range } from '../solver/problem.ts';
import { problemWords } from '../words/problems.ts';
import { Measure } from './measure.tsx';

/** mm of an eighth and of a sixteenth of an inch, which rulers show. */
const EIGHTH = INCH / 8;
const SIXTEENTH = INCH / 16;

interface Props {
  barWidth: number;
  tenTurns: number;
  bars: Range;
  turns: Range;
  onBarWidth: (mm: number) => void;
  onTenTurns: (mm: number) => void;
}

/** Bar and cord for readers who measure in inches: fetched for them alone. */
export function MeasuringInches(props: Props): JSX.Element {
  const problemOf = (field: string, range: Range) => (value: number | string) => {
    const problem = measureProblem(field, value, range);
    return problem ? problemWords(problem, { units: 'inches', isLength: true }) : undefined;
  };
  return (
    <>
      <Measure
        label="The bar is wide"
        value={props.barWidth}
        step={EIGHTH}
        problemOf={problemOf('barWidth', props.bars)}
        onValue={(mm) => mm !== null && props.onBarWidth(mm)}
      />
      <Measure
        label="Ten turns take"
        value={props.tenTurns}
        step={SIXTEENTH}
        problemOf={problemOf('tenTurns', props.turns)}
        onValue={(mm) => mm !== null && props.onTenTurns(mm)}
      />
    </>
  );
}
