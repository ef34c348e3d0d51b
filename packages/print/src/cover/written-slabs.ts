import { at } from '@paperhinge/geometry';
import type { Ink, TypeMeasure } from '../drawing/ink.js';
import { straight } from '../drawing/shapes.js';
import type { Block, Column, Section } from '../report/document.js';
import { beside, body, type Slab, space, stacked, textSlab } from './stack.js';

/** A section of the written document as slabs of a width, its heading kept with its first lines. */
export function sectionSlabs(measure: TypeMeasure, section: Section, width: number): readonly Slab[] {
  const heading = textSlab(measure, section.title, { width, size: 4.3, weight: 'bold' });
  const underline: Slab = {
    height: 1.6,
    draw: (x, y) => [straight('rule', at(x, y + 0.4), at(x + width, y + 0.4))],
  };
  const slabs = section.blocks.flatMap(block => blockSlabs(measure, block, width));
  return [space(3.4), { ...stacked(heading, underline), keepWithNext: true }, ...slabs];
}

function blockSlabs(measure: TypeMeasure, block: Block, width: number): readonly Slab[] {
  switch (block.kind) {
    case 'text':
      return [stacked(space(0.9), textSlab(measure, block.text, { width }))];
    case 'table':
      return tableSlabs(measure, block.columns, block.rows, width);
    case 'steps':
      return block.items.map((item, i) => {
        const lines = [textSlab(measure, item.text, { width: width - 7 })];
        if (item.detail) lines.push(textSlab(measure, item.detail, { width: width - 7, size: 2.6 }));
        return stacked(
          beside(
            [0, textSlab(measure, String(i + 1), { width: 5, weight: 'bold', align: 'right' })],
            [7, stacked(...lines)],
          ),
          space(0.7),
        );
      });
    case 'cautions':
      return block.items.map(text => bulleted(measure, text, width));
    case 'findings':
      return block.items.map(f =>
        stacked(
          beside(
            [0, sign(f.severity)],
            [
              5,
              stacked(
                textSlab(measure, `${f.heading}: ${f.message}`, {
                  width: width - 5,
                  weight: f.severity === 'fault' ? 'bold' : 'regular',
                }),
                textSlab(measure, f.remedy, { width: width - 5, size: 2.7 }),
              ),
            ],
          ),
          space(1),
        ),
      );
  }
}

const bulleted = (measure: TypeMeasure, text: string, width: number): Slab =>
  stacked(beside([0, sign('note')], [5, textSlab(measure, text, { width: width - 5 })]), space(0.5));

/** A sign that survives a photocopy: a solid triangle for what will not sew, an open one for a warning, a dash for a note. */
function sign(severity: 'fault' | 'warning' | 'note'): Slab {
  return {
    height: body.line,
    draw: (x, y): readonly Ink[] => {
      if (severity === 'note') return [straight('rule', at(x + 0.4, y + 1.9), at(x + 2.4, y + 1.9))];
      const corners = [at(x, y + 3), at(x + 1.6, y + 0.2), at(x + 3.2, y + 3)];
      const path = { segments: corners.map((p, i) => [p, corners[(i + 1) % 3]!] as const) };
      return severity === 'fault'
        ? [{ kind: 'fill', role: 'rule', path }]
        : [{ kind: 'stroke', role: 'rule', path, closed: true }];
    },
  };
}

function tableSlabs(
  measure: TypeMeasure,
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly Slab[] {
  const total = columns.reduce((sum, c) => sum + c.share, 0);
  const widths = columns.map(c => (c.share / total) * width);
  const offsets = widths.map((_, i) => widths.slice(0, i).reduce((a, b) => a + b, 0));
  const row = (cells: readonly string[], bold: boolean, size: number): Slab =>
    beside(
      ...cells.map((cell, i): readonly [number, Slab] => [
        offsets[i]!,
        textSlab(measure, cell, {
          width: widths[i]! - 2,
          size,
          align: columns[i]!.align,
          most: 3,
          weight: bold || (i === 0 && size === body.size) ? 'bold' : 'regular',
        }),
      ]),
    );
  const hairline: Slab = {
    height: 0.8,
    draw: (x, y) => [straight('map-page', at(x, y + 0.3), at(x + width, y + 0.3))],
  };
  const head = row(
    columns.map(c => c.title),
    false,
    2.5,
  );
  return [
    { ...head, keepWithNext: true },
    ...rows.map((cells, i) =>
      stacked(i > 0 && cells[0] !== '' ? hairline : space(0.3), row(cells, false, body.size)),
    ),
  ];
}
