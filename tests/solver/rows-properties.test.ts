import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Bundles,
  type Chart,
  type Fit,
  finishSteps,
  type Knot,
  mirrorPiece,
  type Piece,
  planRows,
  type RowPlan,
  type Run,
  type SideName,
  walkLead,
} from '../../src/solver/index.ts';
import { drawing, replay, tries } from '../seed.ts';
import { planByHand, walkByHand } from './by-hand.ts';
import './matchers.ts';
import { brokenRule, chartedPieces, drawOutline, fitOf, mirroredFit, mounted, other, outlines } from './worlds.ts';

/** The rows of a piece that can be tied; a refusal is a failure of the test. */
function rowsOf(piece: Piece): readonly RowPlan[] {
  const rows = planRows(piece);
  if (!('length' in rows)) throw new Error(`not planned: ${JSON.stringify(rows.problem)}`);
  return rows;
}

const eachRow = (
  sentence: (row: RowPlan, above: RowPlan | undefined, piece: Piece & { readonly chart: Chart }) => void,
): void =>
  fc.assert(
    fc.property(chartedPieces, (piece) => {
      const rows = rowsOf(piece);
      for (const [i, row] of rows.entries()) sentence(row, rows[i - 1], piece);
    }),
    tries(300),
  );

const rightward = (row: RowPlan): boolean => row.direction === 'rightward';
/** Size of the bundle at the edge where a row begins or ends. */
const firstEdge = (row: RowPlan, of: RowPlan = row): number => (rightward(of) ? row.leftBundle : row.rightBundle);
const lastEdge = (row: RowPlan, of: RowPlan = row): number => (rightward(of) ? row.rightBundle : row.leftBundle);
const columnsOf = ({ columns: [from, to] }: Run): number[] => {
  const step = from <= to ? 1 : -1;
  return Array.from({ length: Math.abs(to - from) + 1 }, (_, i) => from + i * step);
};

describe('every plan', () => {
  test('is what a maker works out knot by knot', () =>
    fc.assert(
      fc.property(chartedPieces, ({ fit, bundles, startSide, chart }) => {
        expect(rowsOf({ fit, bundles, startSide, chart })).toMatchObject(planByHand(fit, bundles, startSide, chart));
        const plain = rowsOf({ fit, bundles, startSide });
        expect(plain).toMatchObject(planByHand(fit, bundles, startSide));
        for (const { runs } of plain) for (const run of runs) expect(run).not.toHaveProperty('colour');
      }),
      tries(400),
    ));

  test('has a row for each pair of bundles, alternating in direction from the start side on', () =>
    eachRow((row, above, { fit, bundles, startSide }) => {
      expect(row.row).toBe((above?.row ?? 0) + 1);
      expect([row.leftBundle, row.rightBundle]).toEqual([bundles.left[row.row - 1], bundles.right[row.row - 1]]);
      expect(rightward(row)).toBe(above === undefined ? startSide === 'left' : !rightward(above));
      expect(fit.width).toBe(row.lastColumn + row.rightBundle - 1);
    }));

  test('has in each row as many knots as columns from the left bundle’s innermost to the right bundle’s innermost', () =>
    eachRow((row, _, { fit }) => {
      expect(row.firstColumn).toBe(row.leftBundle);
      expect(row.lastColumn).toBe(fit.width - row.rightBundle + 1);
      expect(row.knots).toBe(row.lastColumn - row.firstColumn + 1);
      expect(row.knots).toBe(row.runs.reduce((sum, { count }) => sum + count, 0));
    }));

  test('has in all its rows together as many knots as there are cells inside the outline', () =>
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const { fit, bundles } = piece;
        const corners = [...bundles.left, ...bundles.right].reduce((sum, size) => sum + size - 1, 0);
        const knots = rowsOf(piece).reduce((sum, row) => sum + row.knots, 0);
        expect(knots).toBe(fit.width * bundles.left.length - corners);
      }),
      tries(),
    ));

  test('ties each column once a row, in the order the leading string travels', () =>
    eachRow((row) => {
      const tied = row.runs.flatMap(columnsOf);
      const inOrder = Array.from({ length: row.knots }, (_, i) => row.firstColumn + i);
      expect(tied).toEqual(rightward(row) ? inOrder : inOrder.reverse());
      for (const run of row.runs) expect(run.count).toBe(columnsOf(run).length);
    }));

  test('has every base string under exactly one knot of each row', () =>
    eachRow((row, _, { fit }) => {
      expect(row.runs.reduce((sum, { count, strands }) => sum + count * strands, 0)).toBe(fit.width);
    }));

  test('gives a bundle one turning knot in its innermost column', () =>
    eachRow((row) => {
      for (const [size, column, knot] of [
        [row.leftBundle, row.firstColumn, 'backward-forward'],
        [row.rightBundle, row.lastColumn, 'forward-backward'],
      ] as const) {
        if (size < 2) continue;
        const run = row.runs.find(({ columns: [from] }) => from === column);
        expect(run).toMatchObject({ knot, columns: [column, column], count: 1, strands: size });
      }
      for (const { strands, count } of row.runs) if (strands > 1) expect(count).toBe(1);
    }));

  test('uses forward knots going right and backward knots going left on single strings', () =>
    eachRow((row) => {
      const ordinary: Knot = rightward(row) ? 'forward' : 'backward';
      for (const { knot, columns, strands } of row.runs) {
        const atAnEdge = columns[0] === row.firstColumn || columns[0] === row.lastColumn;
        if (strands === 1 && !atAnEdge) expect(knot).toBe(ordinary);
        else expect([ordinary, 'forward-backward', 'backward-forward']).toContain(knot);
      }
    }));

  test('gives a single edge string a turning knot only at the starting edge, and only when a string has just been let out there', () =>
    eachRow((row, above) => {
      const ordinary: Knot = rightward(row) ? 'forward' : 'backward';
      const starting = row.runs[0];
      const ending = row.runs.at(-1);
      if (firstEdge(row) === 1) {
        const justLetOut = above !== undefined && firstEdge(above, row) === 2;
        expect(starting?.knot).toBe(justLetOut ? (rightward(row) ? 'backward-forward' : 'forward-backward') : ordinary);
      }
      if (lastEdge(row) === 1) expect(ending?.knot).toBe(ordinary);
    }));

  test('moves strings only at the first edge of a row, and only there where its bundle changes', () =>
    eachRow((row, above) => {
      const now = firstEdge(row);
      const before = above === undefined ? now : firstEdge(above, row);
      const wanted = now < before ? 'let-out' : now === before ? 'none' : before === 1 ? 'carry-behind' : 'take-in';
      expect(row.startMove).toBe(wanted);
    }));

  test('changes the far bundle without a move', () => {
    let changes = 0;
    eachRow((row, above) => {
      if (above === undefined || firstEdge(row) !== firstEdge(above, row) || lastEdge(row) === lastEdge(above, row))
        return;
      changes++;
      expect(row.startMove).toBe('none');
    });
    expect(changes).toBeGreaterThan(0);
  });

  test('ties each knot in the colour of its cell, and a bundle in the colour of its innermost column', () =>
    eachRow((row, _, { chart }) => {
      for (const run of row.runs)
        for (const column of columnsOf(run))
          expect(run.colour).toBe(chart.cells[(row.row - 1) * chart.width + column - 1]);
    }));

  test('takes neighbouring knots of one kind and one colour together', () =>
    eachRow((row) => {
      for (const [i, run] of row.runs.entries()) {
        const before = row.runs[i - 1];
        if (before === undefined || before.strands > 1 || run.strands > 1) continue;
        expect([before.knot, before.colour]).not.toEqual([run.knot, run.colour]);
      }
    }));

  test('begun on the other side has the same knots in the same cells, each row worked the other way', () =>
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const here = rowsOf(piece);
        const there = rowsOf({ ...piece, startSide: other(piece.startSide) });
        const cells = (row: RowPlan): Map<number, unknown> =>
          new Map(
            row.runs.flatMap((run) => columnsOf(run).map((column) => [column, [run.strands, run.colour]] as const)),
          );
        for (const [i, row] of here.entries()) {
          const turned = there[i];
          if (turned === undefined) throw new Error(`row ${i + 1} is missing`);
          expect(rightward(turned)).toBe(!rightward(row));
          expect(new Map([...cells(turned)].sort(([a], [b]) => a - b))).toEqual(
            new Map([...cells(row)].sort(([a], [b]) => a - b)),
          );
        }
      }),
      tries(100),
    ));

  test('begins on the left where no side is named', () =>
    fc.assert(
      fc.property(chartedPieces, ({ fit, bundles, chart }) => {
        expect(planRows({ fit, bundles, chart })).toEqual(planRows({ fit, bundles, chart, startSide: 'left' }));
      }),
      tries(100),
    ));
});

describe('the leading string', () => {
  test('walks every plan with a chart without a jump, from string to string as counted by hand', () =>
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const rows = rowsOf(piece);
        expect(rows).toBeWalkable();
        expect(walkLead(rows)).toEqual({ ok: true, path: walkByHand(rows).path });
      }),
      tries(400),
    ));

  test('never jumps on 20,000 outlines, and every row is what a maker works out', () => {
    const draw = drawing();
    const met = new Set<string>();
    for (let n = 1; n <= 20_000; n++) {
      const { fit, bundles, startSide } = drawOutline(draw);
      const where = (): string => `outline ${n}, ${replay}: ${JSON.stringify({ fit, bundles, startSide })}`;
      const rows = planRows({ fit, bundles, startSide });
      if (!('length' in rows)) throw new Error(`refused as ${rows.problem.code}: ${where()}`);
      const walk = walkLead(rows);
      if (!walk.ok) throw new Error(`jumps ${JSON.stringify(walk)}: ${where()}`);
      const byHand = planByHand(fit, bundles, startSide);
      const { path, jump } = walkByHand(byHand);
      if (jump !== null) throw new Error(`the hand's own plan jumps ${JSON.stringify(jump)}: ${where()}`);
      if (walk.path.length !== path.length)
        throw new Error(`${walk.path.length} runs walked, not ${path.length}: ${where()}`);
      for (const [i, place] of path.entries()) {
        const walked = walk.path[i];
        if (
          walked?.row !== place.row ||
          walked.run !== place.run ||
          walked.at !== place.at ||
          walked.ends !== place.ends
        )
          throw new Error(`walked ${JSON.stringify(walked)}, not ${JSON.stringify(place)}: ${where()}`);
      }
      for (const { startMove, direction } of rows) met.add(`${startMove} ${direction}`);
    }
    // Every kind of move is met at both edges, or the outlines prove too little.
    expect(met.size).toBe(8);
  });

  const wrongHand: Record<Knot, Knot> = {
    forward: 'backward',
    backward: 'forward',
    'forward-backward': 'backward-forward',
    'backward-forward': 'forward-backward',
  };

  test('is found to jump, in the very place, when one knot is tied the wrong way round', () =>
    fc.assert(
      fc.property(outlines, fc.nat(), fc.nat(), (piece, whichRow, whichRun) => {
        const rows = rowsOf(piece);
        const row = rows[whichRow % rows.length];
        const swapped = whichRun % (row?.runs.length ?? 1);
        const wrong = rows.map((each) =>
          each === row
            ? {
                ...each,
                runs: each.runs.map((run, i) => (i === swapped ? { ...run, knot: wrongHand[run.knot] } : run)),
              }
            : each,
        );
        const { jump } = walkByHand(wrong);
        expect(jump).toMatchObject({ row: row?.row, run: swapped });
        const walk = walkLead(wrong);
        expect(walk).toMatchObject({ ok: false, row: jump?.row, run: jump?.run, at: jump?.at });
        // Which end of several knots tied the wrong way round comes first is open; of one knot it is not.
        if (row?.runs[swapped]?.count === 1) expect(walk).toMatchObject({ needs: jump?.needs });
      }),
      tries(500),
    ));

  test('is found to jump when a knot that should travel turns back, or one that should turn back travels', () =>
    fc.assert(
      fc.property(outlines, fc.nat(), fc.nat(), (piece, whichRow, whichRun) => {
        const rows = rowsOf(piece);
        const row = rows[whichRow % rows.length];
        const swapped = whichRun % (row?.runs.length ?? 1);
        // Nothing comes after the last knot of a piece, so nothing shows where it ended.
        fc.pre(row !== rows.at(-1) || swapped < (row?.runs.length ?? 0) - 1);
        const turns: Record<Knot, Knot> = {
          forward: 'forward-backward',
          backward: 'backward-forward',
          'forward-backward': 'forward',
          'backward-forward': 'backward',
        };
        const wrong = rows.map((each) =>
          each === row
            ? { ...each, runs: each.runs.map((run, i) => (i === swapped ? { ...run, knot: turns[run.knot] } : run)) }
            : each,
        );
        expect(walkLead(wrong).ok).toBe(false);
      }),
      tries(500),
    ));

  test('is found to jump in the row where a move is left out', () => {
    let moves = 0;
    fc.assert(
      fc.property(outlines, (piece) => {
        const rows = rowsOf(piece);
        for (const row of rows) {
          if (row.startMove === 'none') continue;
          moves++;
          const without = rows.map((each) => (each === row ? { ...each, startMove: 'none' as const } : each));
          const { jump } = walkByHand(without);
          expect(jump).toMatchObject({ row: row.row, run: 0 });
          expect(walkLead(without)).toEqual({ ok: false, ...jump });
        }
      }),
      tries(150),
    );
    expect(moves).toBeGreaterThan(0);
  });

  test('is found to jump in the row where a move is made that the row does not need', () =>
    fc.assert(
      fc.property(outlines, fc.constantFrom('let-out', 'take-in', 'carry-behind' as const), (piece, move) => {
        const rows = rowsOf(piece);
        for (const row of rows.slice(1)) {
          if (row.startMove !== 'none') continue;
          const wrong = rows.map((each) => (each === row ? { ...each, startMove: move } : each)) as RowPlan[];
          expect(walkLead(wrong)).toMatchObject({ ok: false, row: row.row, run: 0 });
        }
      }),
      tries(100),
    ));

  test('is found to jump when a row is left out, worked twice, or worked with a column missing', () => {
    let jumps = 0;
    fc.assert(
      fc.property(outlines, fc.nat(), (piece, which) => {
        const rows = rowsOf(piece);
        const index = which % rows.length;
        const row = rows[index];
        if (row === undefined) throw new Error('no row');
        const without = rows.toSpliced(index, 1);
        const twice = rows.toSpliced(index, 0, row);
        const longest = row.runs.findIndex(({ count }) => count > 1);
        const run = row.runs[longest];
        const shorter = (whole: Run): Run => {
          const [from, to] = whole.columns;
          return { ...whole, columns: [from, to > from ? to - 1 : to + 1], count: whole.count - 1 };
        };
        const gap = run === undefined ? rows : rows.with(index, { ...row, runs: row.runs.with(longest, shorter(run)) });
        for (const wrong of [without, twice, gap]) {
          // Now and then the place of work happens to be the right one all the same.
          const { jump } = walkByHand(wrong);
          if (jump !== null) jumps++;
          expect(walkLead(wrong)).toMatchObject(jump === null ? { ok: true } : { ok: false, ...jump });
        }
      }),
      tries(),
    );
    expect(jumps).toBeGreaterThan(100);
  });
});

const fitFor = (width: number, onBar: number, left: number, right: number): Fit =>
  fitOf(
    { onBar, left, right },
    { width, capacity: onBar, maxBundle: 40, oddMethod: 'lone-string', startSide: 'left' },
    width % 2 === 0 ? null : 'lone-string',
  );

/** All sequences of `length` whole numbers from `low` to `high`. */
function sequences(length: number, low: number, high: number): number[][] {
  if (length === 0) return [[]];
  return sequences(length - 1, low, high).flatMap((start) =>
    Array.from({ length: high - low + 1 }, (_, i) => [...start, low + i]),
  );
}

describe('bundles that break a rule', () => {
  const fit = fitFor(12, 8, 2, 2);
  const refused = (left: number[], right: number[]): unknown => planRows({ fit, bundles: { left, right } });

  test('are refused where there are no rows', () => expect(refused([], [])).toBeRefusedAs('no-rows'));
  test('are refused where the sides differ in length', () =>
    expect(refused([2, 1], [2])).toBeRefusedAs('sides-differ-in-length'));
  test('are refused where row 1 is not what was mounted', () => {
    expect(refused([3, 2], [2, 2])).toBeRefusedAs('not-what-was-mounted');
    expect(refused([2, 2], [1, 1])).toBeRefusedAs('not-what-was-mounted');
    const bare = fitFor(8, 8, 0, 0);
    expect(planRows({ fit: bare, bundles: { left: [2, 1], right: [1, 1] } })).toBeRefusedAs('not-what-was-mounted');
    expect(planRows({ fit: bare, bundles: { left: [0, 1], right: [1, 1] } })).toHaveProperty('ok', false);
  });
  test('are refused where a bundle changes by more than one, and the row is named', () => {
    expect(refused([2, 2, 4], [2, 2, 2])).toBeRefusedAs('changes-by-more-than-one');
    expect(refused([2, 3, 4, 5, 3], [2, 2, 2, 2, 2])).toMatchObject({ problem: { row: 5 } });
    expect(refused([2, 2, 2], [2, 3, 1])).toMatchObject({ problem: { code: 'changes-by-more-than-one', row: 3 } });
  });
  test('are refused where they hold more strings than there are', () => {
    const thick = fitFor(12, 2, 6, 4);
    expect(planRows({ fit: thick, bundles: { left: [6, 7, 7, 6], right: [4, 5, 6, 5] } })).toMatchObject({
      ok: false,
      problem: { code: 'bundles-exceed-width', row: 3 },
    });
  });
  test('are refused where they leave no two single strings to finish with', () => {
    const thick = fitFor(12, 2, 6, 4);
    expect(planRows({ fit: thick, bundles: { left: [6, 6], right: [4, 5] } })).toBeRefusedAs(
      'no-strings-to-finish-with',
    );
    const narrow = fitFor(3, 3, 0, 0);
    expect(planRows({ fit: narrow, bundles: { left: [1, 2], right: [1, 1] } })).toBeRefusedAs(
      'no-strings-to-finish-with',
    );
    expect(rowsOf({ fit: narrow, bundles: { left: [1, 2, 1], right: [1, 1, 1] }, startSide: 'left' })).toBeWalkable();
  });
  test('are refused where an edge has no string or part of one', () => {
    expect(refused([2, 1, 0], [2, 1, 1])).toBeRefusedAs('out-of-range');
    expect(refused([2, 1.5, 1], [2, 1, 1])).toBeRefusedAs('not-a-whole-number');
  });
  test('are refused where the chart has another size', () => {
    const chart = (width: number, height: number): Chart => ({
      width,
      height,
      palette: [{ name: 'tar', colour: '#222222' }],
      cells: new Uint8Array(width * height),
    });
    const bundles: Bundles = { left: [2, 1, 2], right: [2, 1, 2] };
    for (const [width, height] of [
      [11, 3],
      [13, 3],
      [12, 2],
      [12, 4],
      [3, 12],
    ] as const)
      expect(planRows({ fit, bundles, chart: chart(width, height) })).toBeRefusedAs('chart-size-differs');
    expect(planRows({ fit, bundles, chart: { ...chart(12, 3), cells: new Uint8Array(35) } })).toHaveProperty(
      'ok',
      false,
    );
    expect(planRows({ fit, bundles, chart: chart(12, 3) })).toHaveLength(3);
  });

  test('are refused in every small world, and all others are planned, walk, and can be finished', () => {
    const worlds = [
      fitFor(2, 2, 0, 0),
      fitFor(3, 3, 0, 0),
      fitFor(4, 2, 2, 0),
      fitFor(4, 4, 0, 0),
      fitFor(5, 3, 2, 0),
      fitFor(5, 5, 0, 0),
      fitFor(6, 2, 2, 2),
      fitFor(6, 4, 2, 0),
      fitFor(7, 3, 2, 2),
    ].flatMap((fit) => [fit, mirroredFit(fit)]);
    const counted = { planned: 0, refused: 0 };
    let mismatch: string | null = null;
    for (const world of worlds) {
      for (const height of [1, 2, 3]) {
        const all = sequences(height, 0, Math.min(world.width, 4));
        for (const left of all)
          for (const right of all) {
            const bundles = { left, right };
            const rule = brokenRule(world, bundles);
            const rows = planRows({ fit: world, bundles });
            const planned = 'length' in rows;
            counted[planned ? 'planned' : 'refused']++;
            const walks = planned && walkLead(rows).ok && finishSteps({ fit: world, bundles }).ok;
            if (planned ? rule !== null || !walks : rule === null)
              mismatch ??= `${JSON.stringify({ ...mounted(world), width: world.width, ...bundles })}: ${rule ?? 'legal'}, ${planned ? `planned, ${walks ? 'walks' : 'does not walk'}` : rows.problem.code}`;
          }
      }
    }
    expect(mismatch).toBeNull();
    expect(Math.min(counted.planned, counted.refused)).toBeGreaterThan(200);
  });
});

describe('mirroring a whole piece', () => {
  test('mirrors its plan: the mirrored rows are the rows of the mirrored piece', () =>
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const rows = rowsOf(piece);
        const mirrored = mirrorPiece(piece);
        expect(mirrorPiece({ ...piece, rows }).rows).toEqual(planRows(mirrored));
      }),
      tries(),
    ));

  test('twice gives the piece back', () =>
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const whole = { ...piece, rows: rowsOf(piece) };
        expect(mirrorPiece(mirrorPiece(whole))).toEqual(whole);
        const { fit, bundles, startSide } = piece;
        expect(mirrorPiece(mirrorPiece({ fit, bundles, startSide }))).toEqual({ fit, bundles, startSide });
      }),
      tries(),
    ));

  test('exchanges sides, start and the side that carries, and reads every row of the chart backwards', () =>
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const { fit, bundles, startSide, chart } = mirrorPiece(piece);
        expect(fit).toEqual(mirroredFit(piece.fit));
        expect(bundles).toEqual({ left: piece.bundles.right, right: piece.bundles.left });
        expect(startSide).toBe(other(piece.startSide));
        const rowsOfCells = ({ width, height, cells }: Chart): number[][] =>
          Array.from({ length: height }, (_, row) => [...cells.subarray(row * width, (row + 1) * width)]);
        if (chart === undefined) throw new Error('the chart is lost');
        expect(chart).toMatchObject({
          width: piece.chart.width,
          height: piece.chart.height,
          palette: piece.chart.palette,
        });
        expect(rowsOfCells(chart)).toEqual(rowsOfCells(piece.chart).map((row) => row.reverse()));
      }),
      tries(),
    ));

  test('leaves the piece itself as it was', () =>
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const whole = { ...piece, rows: rowsOf(piece) };
        const kept = structuredClone(whole);
        mirrorPiece(whole);
        expect(whole).toEqual(kept);
      }),
      tries(50),
    ));

  test('mirrors the walk of the leading string', () =>
    fc.assert(
      fc.property(chartedPieces, (piece) => {
        const here = walkLead(rowsOf(piece));
        const there = walkLead(rowsOf(mirrorPiece(piece)));
        if (!here.ok || !there.ok) throw new Error('a plan does not walk');
        const { width } = piece.fit;
        expect(there.path).toEqual(
          here.path.map((place) => ({ ...place, at: width - place.at, ends: width - place.ends })),
        );
      }),
      tries(),
    ));
});

describe('finishing', () => {
  const eachFinish = (
    sentence: (
      finish: ReturnType<typeof finishSteps> & { ok: true },
      piece: { fit: Fit; bundles: Bundles; startSide: SideName },
    ) => void,
  ): void =>
    fc.assert(
      fc.property(outlines, (piece) => {
        const finish = finishSteps(piece);
        if (!finish.ok) throw new Error(`not finished: ${JSON.stringify(finish)}`);
        sentence(finish, piece);
      }),
      tries(),
    );
  const last = ({ left, right }: Bundles): number => (left.at(-1) ?? Number.NaN) + (right.at(-1) ?? Number.NaN);

  test('starts from the single strings between the two last bundles', () =>
    eachFinish(({ singles }, { fit, bundles }) => {
      if (fit.width >= 4) expect(singles).toBe(fit.width - last(bundles));
    }));

  test('gathers equal numbers from each side until two are left in the middle, or three where the number is odd', () =>
    eachFinish(({ singles, perSide, middle }, { fit }) => {
      if (fit.width < 4) return;
      expect(2 * perSide + middle).toBe(singles);
      expect(middle).toBe(singles % 2 === 0 ? 2 : 3);
      expect(perSide).toBe(singles % 2 === 0 ? (singles - 2) / 2 : (singles - 3) / 2);
    }));

  test('makes both bundles thicker by as many, until with the middle strings they hold every string', () =>
    eachFinish(({ steps, perSide, middle }, { fit, bundles }) => {
      const gathered = steps.filter(({ key }) => key === 'gather').map(({ values }) => values);
      expect(gathered.map(({ count }) => count)).toEqual(perSide > 0 ? [perSide, perSide] : []);
      if (perSide === 0) return;
      const [left, right] = gathered;
      expect(left).toMatchObject({ side: 'left', bundle: bundles.left.at(-1), from: (bundles.left.at(-1) ?? 0) + 1 });
      expect(right).toMatchObject({
        side: 'right',
        bundle: bundles.right.at(-1),
        from: fit.width - (bundles.right.at(-1) ?? 0),
      });
      expect(Number(left?.['becomes']) + middle + Number(right?.['becomes'])).toBe(fit.width);
      expect(Number(right?.['to']) - Number(left?.['to']) - 1).toBe(middle);
    }));

  test('lays the middle one of three strings against the bundle of the starting side', () =>
    eachFinish(({ steps, middle }, { fit, bundles, startSide }) => {
      const laid = steps.filter(({ key }) => key === 'lay-middle').map(({ values }) => values);
      const [left, right] = [bundles.left.at(-1) ?? 0, bundles.right.at(-1) ?? 0];
      const halfway = (left + 1 + fit.width - right) / 2;
      expect(laid).toEqual(fit.width >= 4 && middle === 3 ? [{ side: startSide, column: halfway }] : []);
    }));

  test('gathers nothing where the piece is narrower than four', () =>
    eachFinish(({ perSide }, { fit }) => {
      if (fit.width < 4) expect(perSide).toBe(0);
    }));

  test('has steps, in words of their own, with figures that are none of them missing', () =>
    eachFinish((finish) => {
      expect(finish.steps.length).toBeGreaterThan(0);
      for (const { key } of finish.steps) expect(key).not.toBe('');
      expect(finish).toHoldNoNaN();
    }));
});
