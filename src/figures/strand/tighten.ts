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
  for (let step = 0; step < steps; step++) {
    const before = lines.map((line) => line.copy());
    for (const line of lines) for (const k of [4, 2, 1]) line.shorten(k);
    for (const line of lines) line.pushUp(pushedUpFrom);
    for (const [c, line] of lines.entries()) line.noFartherThan(before[c] as Strung, stride);
    for (let round = 0; round < 4; round++) {
      partCords(lines);
      for (const line of lines) for (const rod of rods) {
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
    return lengthOf(this.path()) / (this.count - 1);
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
      for (let a = 3 * i; a < 3 * i + 3; a++)
        this.xyz[a] = before.at(a) + ((this.at(a) - before.at(a)) * limit) / gone;
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

function partCords(lines: readonly Strung[]): void {
  for (const [a, first] of lines.entries())
    for (let b = a; b < lines.length; b++) {
      const second = lines[b] as Strung;
      const skip = a === b ? Math.ceil(bend / first.spacing()) : 0;
      for (let i = 0; i < first.count; i++) {
        const x = first.at(3 * i);
        const y = first.at(3 * i + 1);
        const z = first.at(3 * i + 2);
        for (let j = a === b ? i + skip : 0; j < second.count; j++) {
          const dx = second.at(3 * j) - x;
          if (dx > apart || dx < -apart) continue;
          const dy = second.at(3 * j + 1) - y;
          if (dy > apart || dy < -apart) continue;
          const dz = second.at(3 * j + 2) - z;
          const square = dx * dx + dy * dy + dz * dz;
          if (square >= apart * apart || square === 0) continue;
          const off = Math.sqrt(square);
          const push = (apart - off) / off / 2;
          const heldI = i === 0 || i === first.count - 1;
          const heldJ = j === 0 || j === second.count - 1;
          if (!heldI) {
            first.xyz[3 * i] = first.at(3 * i) - dx * push;
            first.xyz[3 * i + 1] = first.at(3 * i + 1) - dy * push;
            first.xyz[3 * i + 2] = first.at(3 * i + 2) - dz * push;
          }
          if (!heldJ) {
            second.xyz[3 * j] = second.at(3 * j) + dx * push;
            second.xyz[3 * j + 1] = second.at(3 * j + 1) + dy * push;
            second.xyz[3 * j + 2] = second.at(3 * j + 2) + dz * push;
          }
        }
      }
    }
}

