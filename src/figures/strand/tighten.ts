import { evenly, lengthOf } from './curve.ts';
import type { Path, Point } from './point.ts';

/** Something that does not give: a straight round rod along one axis, `radius` in d. */
export interface Rod {
  readonly along: 'x' | 'y';
  /** Where it stands: [y, z] for a rod along x, [x, z] for one along y. */
  readonly at: readonly [number, number];
  readonly radius: number;
}

export interface Tightening {
  /** Every cord that gives, from one held end to the other. */
  readonly cords: readonly Path[];
  readonly rods: readonly Rod[];
  readonly steps?: number;
  /**
   * Within this distance of the rod, across, every pass in front lies on the rod and none climbs over
   * another.
   */
  readonly snug?: number;
  /** Below this height, in d, passes are pushed up against what is above them, as a maker pushes a knot home. */
  readonly pushedUpFrom?: number;
  /** Points along each cord; by default one for every 0.3 d. */
  readonly counts?: readonly number[];
}

/** Centre lines keep this far apart, in d: cord under pull flattens a little. */
const apart = 0.97;
/** Parts of one cord nearer than this along it may touch: the inside of a bend. */
const bend = 1.5;
/** A stroke that runs down in front runs beside the base, this far from its middle, not on it. */
const beside = 1.25;
/** How far passes are pushed up in one step, in d. */
const push = 0.02;
/** The farthest a point moves in one step, in d. */
const stride = 0.07;
/** A picture is kept whenever some point has moved this far since the last, in d. */
const keepEvery = 0.16;

/**
 * Draws cords up: both ends held, each shortened step by step, never nearer to itself, to another
 * cord or to a rod than a cord's thickness allows. Returns the states on the way, loosest first;
 * each state has the points of every cord at equal steps along it. Plain sums, products and square
 * roots in a fixed order, so every machine gets the same figures.
 */
export function tighten({ cords, rods, steps = 400, counts, snug = 0, pushedUpFrom = Infinity }: Tightening): Path[][] {
  let lines = cords.map((cord, c) => Strung.from(cord, counts?.[c] ?? Math.ceil(lengthOf(cord) / 0.3)));
  const states = [lines.map((line) => line.path())];
  let kept = lines.map((line) => line.copy());
  let pairs: readonly number[] = [];
  for (let step = 0; step < steps; step++) {
    const before = lines.map((line) => line.copy());
    for (const line of lines) for (const k of [4, 2, 1]) line.shorten(k);
    for (const line of lines) line.pushUp(pushedUpFrom);
    for (const [c, line] of lines.entries()) line.noFartherThan(before[c] as Strung, stride);
    if (step % 2 === 0) pairs = nearPairs(lines);
    for (let round = 0; round < 4; round++) {
      partAll(lines, pairs);
      for (const line of lines)
        for (const rod of rods) {
          line.clear(rod);
          if (snug > 0) line.layOn(rod, snug);
        }
    }
    for (const [c, line] of lines.entries()) line.noFartherThan(before[c] as Strung, stride * 1.5);
    if (step % 4 === 3) lines = lines.map((line) => Strung.from(line.path(), line.count));
    if (lines.some((line, c) => line.movedFrom(kept[c] as Strung) > keepEvery) || step === steps - 1) {
      states.push(lines.map((line) => line.path()));
      kept = lines.map((line) => line.copy());
    }
  }
  return states;
}

class Strung {
  readonly count: number;
  readonly xyz: Float64Array;
  constructor(xyz: Float64Array) {
    this.xyz = xyz;
    this.count = xyz.length / 3;
  }
  static from(path: Path, count: number): Strung {
    return new Strung(Float64Array.from(evenly(path, count).flat()));
  }
  at(i: number): number {
    return this.xyz[i] as number;
  }
  path(): Point[] {
    return Array.from({ length: this.count }, (_, i) => [this.at(3 * i), this.at(3 * i + 1), this.at(3 * i + 2)]);
  }
  copy(): Strung {
    return new Strung(this.xyz.slice());
  }
  spacing(): number {
    let sum = 0;
    for (let i = 1; i < this.count; i++) sum += this.step(i);
    return sum / (this.count - 1);
  }
  longestStep(): number {
    let most = 1e-6;
    for (let i = 1; i < this.count; i++) most = Math.max(most, this.step(i));
    return most;
  }
  private step(i: number): number {
    const x = this.at(3 * i) - this.at(3 * i - 3);
    const y = this.at(3 * i + 1) - this.at(3 * i - 2);
    const z = this.at(3 * i + 2) - this.at(3 * i - 1);
    return Math.sqrt(x * x + y * y + z * z);
  }
  shift(i: number, x: number, y: number, z: number): void {
    this.xyz[3 * i] = this.at(3 * i) + x;
    this.xyz[3 * i + 1] = this.at(3 * i + 1) + y;
    this.xyz[3 * i + 2] = this.at(3 * i + 2) + z;
  }
  shorten(reach: number): void {
    const old = this.xyz.slice();
    const gain = 0.5;
    for (let i = 1; i < this.count - 1; i++) {
      const k = Math.min(reach, i, this.count - 1 - i);
      for (let a = 0; a < 3; a++) {
        const here = old[3 * i + a] as number;
        this.xyz[3 * i + a] =
          here + (gain / 2) * ((old[3 * (i - k) + a] as number) + (old[3 * (i + k) + a] as number) - 2 * here);
      }
    }
  }
  pushUp(from: number): void {
    for (let i = 1; i < this.count - 1; i++) {
      const y = this.at(3 * i + 1);
      if (y > from && y < from + 5 && Math.abs(this.at(3 * i)) < 2.4) this.xyz[3 * i + 1] = y - push;
    }
  }
  noFartherThan(before: Strung, limit: number): void {
    for (let i = 0; i < this.count; i++) {
      const gone = this.stepFrom(before, i);
      if (gone <= limit) continue;
      for (let a = 3 * i; a < 3 * i + 3; a++) this.xyz[a] = before.at(a) + ((this.at(a) - before.at(a)) * limit) / gone;
    }
  }
  private stepFrom(before: Strung, i: number): number {
    const x = this.at(3 * i) - before.at(3 * i);
    const y = this.at(3 * i + 1) - before.at(3 * i + 1);
    const z = this.at(3 * i + 2) - before.at(3 * i + 2);
    return Math.sqrt(x * x + y * y + z * z);
  }
  movedFrom(before: Strung): number {
    let most = 0;
    for (let i = 0; i < this.count; i++) most = Math.max(most, this.stepFrom(before, i));
    return most;
  }
  layOn({ along, at, radius }: Rod, reach: number): void {
    const across = along === 'y' ? 0 : 1;
    const room = radius + apart - 0.5 + 0.12;
    for (let i = 1; i < this.count - 1; i++) {
      if (Math.abs(this.at(3 * i + across) - at[0]) > (this.at(3 * i + 2) - at[1] > 0.2 ? beside : reach)) continue;
      const v = this.at(3 * i + 2) - at[1];
      const goesAcross = this.at(3 * i + 3 + across) - this.at(3 * i - 3 + across);
      const goesAlong = this.at(3 * i + 4 - across) - this.at(3 * i - 2 - across);
      if (v > 0.2 && Math.abs(goesAlong) > Math.abs(goesAcross)) {
        const u = this.at(3 * i + across) - at[0];
        this.xyz[3 * i + across] = at[0] + (u < 0 ? Math.max(-beside, u - 0.05) : Math.min(beside, u + 0.05));
      }
      if (v > room) this.xyz[3 * i + 2] = at[1] + Math.max(room, v - 0.05);
    }
  }
  clear({ along, at, radius }: Rod): void {
    const across = along === 'y' ? 0 : 1;
    const room = radius + apart - 0.5;
    for (let i = 1; i < this.count - 1; i++) {
      const u = this.at(3 * i + across) - at[0];
      const v = this.at(3 * i + 2) - at[1];
      const off = Math.sqrt(u * u + v * v);
      if (off >= room || off === 0) continue;
      this.xyz[3 * i + across] = at[0] + (u * room) / off;
      this.xyz[3 * i + 2] = at[1] + (v * room) / off;
    }
  }
}

/**
 * Which points may come to touch within two steps, four figures each: the cord and point of the one, the cord and
 * point of the other.
 */
function nearPairs(lines: readonly Strung[]): number[] {
  const pairs: number[] = [];
  const reach = apart + 8 * stride;
  const steps = lines.map((line) => line.longestStep());
  for (const [a, one] of lines.entries())
    for (let b = a; b < lines.length; b++) {
      const other = lines[b] as Strung;
      const step = steps[b] as number;
      const skip = a === b ? Math.ceil(bend / one.spacing()) : 0;
      for (let i = 0; i < one.count; i++) {
        const x = one.at(3 * i);
        const y = one.at(3 * i + 1);
        const z = one.at(3 * i + 2);
        let j = a === b ? i + skip : 0;
        while (j < other.count) {
          const dx = other.at(3 * j) - x;
          const dy = other.at(3 * j + 1) - y;
          const dz = other.at(3 * j + 2) - z;
          const off = Math.sqrt(dx * dx + dy * dy + dz * dz);
          if (off < reach) pairs.push(a, i, b, j);
          // No point between here and there can be nearer than this: the cord is no longer than its steps.
          j += off > reach ? Math.max(1, Math.floor((off - reach) / step)) : 1;
        }
      }
    }
  return pairs;
}

function partAll(lines: readonly Strung[], pairs: readonly number[]): void {
  for (let p = 0; p < pairs.length; p += 4) {
    const one = lines[pairs[p] as number] as Strung;
    const other = lines[pairs[p + 2] as number] as Strung;
    part(one, pairs[p + 1] as number, other, pairs[p + 3] as number);
  }
}

/** Pushes two points apart, each by half of what is missing; a held end does not give. */
function part(one: Strung, i: number, other: Strung, j: number): void {
  const dx = other.at(3 * j) - one.at(3 * i);
  const dy = other.at(3 * j + 1) - one.at(3 * i + 1);
  const dz = other.at(3 * j + 2) - one.at(3 * i + 2);
  const square = dx * dx + dy * dy + dz * dz;
  if (square >= apart * apart || square === 0) return;
  const off = Math.sqrt(square);
  const by = (apart - off) / off / 2;
  if (i > 0 && i < one.count - 1) one.shift(i, -dx * by, -dy * by, -dz * by);
  if (j > 0 && j < other.count - 1) other.shift(j, dx * by, dy * by, dz * by);
}
