declare module 'subset-font' {
  interface AxisRange {
    readonly min: number;
    readonly max: number;
    readonly default?: number;
  }

  export default function subsetFont(
    font: Buffer,
    text: string,
    options: { targetFormat: 'woff2'; variationAxes?: Readonly<Record<string, number | AxisRange>> },
  ): Promise<Buffer>;
}
