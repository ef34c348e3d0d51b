import type { Path } from '@paperhinge/geometry';
import { joined, reversedPath } from '@paperhinge/geometry/paths';
import type { CutPiece, Joint, Section, Spoke } from './cut-piece.js';
import type { Stretch } from './ring.js';

/** The plane graph of an outline and the cuts through it. */
export interface CutGraph {
  readonly stretches: readonly Stretch[];
  readonly courses: readonly Path[];
  readonly joints: readonly Joint[];
  /** The joints on the outline, in its order. */
  readonly nodes: readonly (Joint & { readonly gap: number })[];
}

/** A step of a walk round a face: along the outline from a node, or along a cut in one direction. */
type Step =
  | { readonly along: 'outline'; readonly node: number }
  | { readonly along: 'cut'; readonly spoke: Spoke };

/**
 * The sections between the cuts, and which of them each stretch and each side of a cut borders: the faces of the
 * plane graph, each traced by keeping to the first branch on the inner side.
 */
export function facesOf(graph: CutGraph): Pick<CutPiece, 'sections' | 'sectionOf' | 'beside'> {
  const { stretches, courses, joints, nodes } = graph;
  if (nodes.length === 0) return uncut(stretches);
  const sectionOf: number[] = stretches.map(() => 0);
  const seen = new Map<string, number>();
  const sections: Section[] = [];
  const every: Step[] = [
    ...nodes.map((_, node): Step => ({ along: 'outline', node })),
    ...joints.flatMap(j => j.spokes).map((spoke): Step => ({ along: 'cut', spoke })),
  ];
  for (const first of every) {
    if (seen.has(keyOf(first))) continue;
    const own: number[] = [];
    const border: Path[] = [];
    for (let step = first; !seen.has(keyOf(step)); step = following(graph, step)) {
      seen.set(keyOf(step), sections.length);
      if (step.along === 'outline') {
        const run = runFrom(graph, step.node);
        own.push(...run);
        border.push(...run.map(i => stretches[i]!.path));
      } else {
        const course = courses[step.spoke.cut]!;
        border.push(step.spoke.end === 'from' ? course : reversedPath(course));
      }
    }
    for (const i of own) sectionOf[i] = sections.length;
    sections.push({ stretches: own, border: joined(...border) });
  }
  const beside = courses.map((_, cut) => ({ right: seen.get(`from${cut}`)!, left: seen.get(`to${cut}`)! }));
  return { sections, sectionOf, beside };
}

const uncut = (stretches: readonly Stretch[]) => ({
  sections: [{ stretches: [...stretches.keys()], border: joined(...stretches.map(s => s.path)) }],
  sectionOf: stretches.map(() => 0),
  beside: [],
});

const keyOf = (step: Step): string =>
  step.along === 'outline' ? `o${step.node}` : `${step.spoke.end}${step.spoke.cut}`;

/** The stretches of the outline from a node to the next. */
function runFrom({ stretches, nodes }: CutGraph, node: number): readonly number[] {
  const next = nodes[(node + 1) % nodes.length]!.gap,
    start = nodes[node]!.gap;
  const count = (next - start + stretches.length) % stretches.length || stretches.length;
  return Array.from({ length: count }, (_, k) => (start + 1 + k) % stretches.length);
}

function following({ joints, nodes }: CutGraph, step: Step): Step {
  if (step.along === 'outline')
    return { along: 'cut', spoke: nodes[(step.node + 1) % nodes.length]!.spokes[0]! };
  const { cut, end } = step.spoke;
  const far = end === 'from' ? 'to' : 'from';
  const joint = joints.find(j => j.spokes.some(s => s.cut === cut && s.end === far))!;
  const place = joint.spokes.findIndex(s => s.cut === cut && s.end === far);
  if (joint.gap === undefined)
    return { along: 'cut', spoke: joint.spokes[(place + 1) % joint.spokes.length]! };
  const next = joint.spokes[place + 1];
  return next
    ? { along: 'cut', spoke: next }
    : { along: 'outline', node: (nodes as readonly Joint[]).indexOf(joint) };
}
