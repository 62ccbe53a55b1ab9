// The joint diagram drawn: the bolt's line up, the clamped parts' line down, and what an outside load leaves between
// the faces. Only places are worked out here.
import { scaleLinear } from "d3";
import type { UnitChoice } from "../../methods/solution.ts";
import type { Joint } from "../../pictures/joint-diagram.ts";
import { setText } from "../../report/figure-text.ts";
import { dimension, dot, type Label, labelColumn, line, path, picture, text } from "./marks.ts";

/** Along the foot: the bolt's stretch to the left of the meeting point, the parts' squeeze to its right. */
export function drawJoint(joint: Joint, width: number, unitOf: UnitChoice): SVGSVGElement {
  const force = (si: number) => setText(si, "force", unitOf("force"));
  const height = Math.round(Math.min(360, Math.max(260, width * 0.46)));
  const gutter = width < 520 ? 166 : 196;
  const [top, foot] = [22, height - 34];
  const high = Math.max(joint.boltLoad, joint.preload, joint.maximum ?? 0, joint.proofLoad ?? 0) * 1.06;
  // Share of the total: the bolt stretches in proportion 1 − φ, the parts give φ, whatever the units.
  const y = scaleLinear([0, high], [foot, top]);
  const meet = 1 - joint.share;
  const alongBolt = (load: number) => (load / joint.preload) * meet;
  const alongParts = (from: number, load: number) =>
    alongBolt(from) + ((from - load) / joint.preload) * joint.share;
  const reach = Math.max(1, alongParts(joint.maximum ?? joint.preload, 0));
  const x = scaleLinear([0, reach], [14, width - gutter]);
  const root = picture(width, height);
  const opened = joint.clampLoad <= 0;
  const loadedAt = opened ? alongBolt(joint.boltLoad) : alongParts(joint.preload, joint.clampLoad);
  const limits = [joint.minimum, joint.maximum].filter((load) => load !== undefined);

  root.append(
    line("axis", x(0), foot, width - gutter + 6, foot),
    line("axis", x(0), foot, x(0), top - 6),
    ...limits.flatMap((load) => [
      path("thin dashed", `M${x(alongBolt(load))} ${y(load)} L${x(alongParts(load, 0))} ${foot}`),
      dot(x(alongBolt(load)), y(load), "point open"),
    ]),
    path(
      "strong",
      `M${x(0)} ${foot} L${x(alongBolt(Math.max(joint.boltLoad, joint.maximum ?? 0)))} ${y(Math.max(joint.boltLoad, joint.maximum ?? 0))}`,
    ),
    path("strong", `M${x(meet)} ${y(joint.preload)} L${x(1)} ${foot}`),
    dimension(x(loadedAt), y(joint.boltLoad), x(loadedAt), y(opened ? 0 : joint.clampLoad)),
    !opened ? path("clamp-left", `M${x(loadedAt)} ${y(joint.clampLoad)} L${x(loadedAt)} ${foot}`) : "",
    dot(x(meet), y(joint.preload)),
  );
  root.append(
    text("bolt", x(meet * 0.45) - 8, y(joint.preload * 0.45), "end", "strong-text"),
    text("parts", x(meet + joint.share * 0.86) + 8, foot - 8, "start", "strong-text"),
    text("load", x(0) + 6, top, "start", "quiet-text"),
    text(
      width < 520 ? "stretch and squeeze" : "stretch of the bolt, then squeeze of the parts",
      (x(0) + x(reach)) / 2,
      foot + 18,
      "middle",
      "quiet-text",
    ),
    labelColumn(
      levels(joint, y, force, { meet: x(meet), loaded: x(loadedAt), along: (load) => x(alongBolt(load)) }),
      width - gutter + 18,
      x(loadedAt),
      top,
      foot - 4,
    ),
  );
  if (joint.proofLoad !== undefined)
    root.append(line("limit", x(0), y(joint.proofLoad), width - gutter + 10, y(joint.proofLoad)));
  return root;
}

interface Points {
  readonly meet: number;
  readonly loaded: number;
  readonly along: (load: number) => number;
}

function levels(
  joint: Joint,
  y: (load: number) => number,
  force: (si: number) => string,
  at: Points,
): readonly Label[] {
  const labels: Label[] = [
    {
      words: `in the bolt ${force(joint.boltLoad)}`,
      y: y(joint.boltLoad),
      kind: "strong-text",
      from: at.loaded,
    },
    {
      words: `outside load ${force(joint.externalLoad)}`,
      y: y((joint.boltLoad + joint.clampLoad) / 2),
      from: at.loaded,
    },
    {
      words: `clamp left ${force(joint.clampLoad)}`,
      y: y(joint.clampLoad / 2),
      kind: "strong-text",
      from: at.loaded,
    },
    { words: `preload ${force(joint.preload)}`, y: y(joint.preload), from: at.meet },
  ];
  if (joint.proofLoad !== undefined)
    labels.push({
      words: `proof ${force(joint.proofLoad)}`,
      y: y(joint.proofLoad),
      kind: "limit-text",
      from: at.along(joint.boltLoad),
    });
  if (joint.maximum !== undefined)
    labels.push({
      words: `largest ${force(joint.maximum)}`,
      y: y(joint.maximum),
      kind: "quiet-text",
      from: at.along(joint.maximum),
    });
  if (joint.minimum !== undefined)
    labels.push({
      words: `least ${force(joint.minimum)}`,
      y: y(joint.minimum),
      kind: "quiet-text",
      from: at.along(joint.minimum),
    });
  return labels;
}
