// Numeric integration for second implementations.

const nodes = [
  0.0765265211334973, 0.2277858511416451, 0.3737060887154195, 0.5108670019508271, 0.636053680726515,
  0.7463319064601508, 0.8391169718222188, 0.912234428251326, 0.9639719272779138, 0.9931285991850949,
];
const weights = [
  0.1527533871307258, 0.1491729864726037, 0.142096109318382, 0.1316886384491766, 0.1181945319615184,
  0.1019301198172404, 0.0832767415767048, 0.0626720483341091, 0.0406014298003869, 0.0176140071391521,
];

/** Gauss-Legendre of order 20 on equal panels. Nodes and weights: Abramowitz and Stegun, Table 25.4. */
export function gauss20(f: (x: number) => number, from: number, to: number, panels: number): number {
  const half = (to - from) / panels / 2;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const middle = from + (2 * panel + 1) * half;
    for (const [i, node] of nodes.entries())
      sum += (weights[i] ?? 0) * half * (f(middle - half * node) + f(middle + half * node));
  }
  return sum;
}
