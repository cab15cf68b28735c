import { encode } from 'uqr';

/**
 * The QR code of an address as one SVG, dark modules on white with the quiet zone of four modules that readers need.
 * Throws where the address is longer than the largest code holds (2331 bytes at this level of correction).
 */
export function qrSvg(address: string, label = 'QR code of this page’s address'): string {
  const { data, size } = encode(address, { ecc: 'M', border: 4 });
  const runs = data.flatMap((row, y) => {
    const dark = row.map((module) => (module ? '1' : '0')).join('');
    return [...dark.matchAll(/1+/g)].map((run) => `M${run.index} ${y}h${run[0].length}v1H${run.index}z`);
  });
  return `<svg viewBox="0 0 ${size} ${size}" role="img" aria-label="${label}" shape-rendering="crispEdges"><path fill="#fff" d="M0 0h${size}v${size}H0z"/><path d="${runs.join('')}"/></svg>`;
}
