import type { Block, Column, Section } from './document.js';
import { escaped } from './escape.js';
import { picturesHtml } from './picture.js';
import type { ReportSource } from './source.js';
import { reportStyle } from './style.js';
import { writtenReport } from './written.js';

/**
 * The record as one page of HTML that stands alone: no script, nothing fetched, every name escaped. Reads well on a
 * screen and prints well on paper. The same words as the cover of the printed pages, and every figure behind them.
 * @throws PatternError what a piece's cutting line refuses
 */
export function reportHtml(source: ReportSource): string {
  const written = writtenReport(source);
  const title = escaped(written.title);
  const sections = [pictures(source), ...written.sections.map(sectionHtml)];
  const links = [
    source.before ? link('pieces', 'Before and after') : link('pieces', 'Pieces'),
    ...written.sections.map(s => link(s.id, s.title)),
  ];
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${reportStyle}</style>
</head>
<body>
<main>
<header>
<h1>${title}</h1>
${written.facts.length > 0 ? `<p class="facts">${written.facts.map(escaped).join(' · ')}</p>` : ''}
${verdict(source)}
</header>
<nav>${links.join('')}</nav>
${sections.join('\n')}
<footer>Lengths in millimetres unless said otherwise; inches beside them to the nearest eighth for cutting, the exact figure next to it. Measure one printed square before you cut.</footer>
</main>
</body>
</html>
`;
}

const link = (id: string, title: string): string => `<a href="#${id}">${escaped(title)}</a>`;

/** In one line: does it sew? */
function verdict({ record }: ReportSource): string {
  if (!record) return '';
  const count = (severity: string) => record.findings.filter(f => f.severity === severity).length;
  const faults = count('fault'),
    warnings = count('warning');
  const seams = Object.values(record.after.seams);
  const sew = seams.filter(s => s.matches).length;
  if (faults > 0)
    return `<p class="verdict fault">${faults === 1 ? 'One thing' : `${faults} things`} will not sew or fit yet: see the checks.</p>`;
  const walked = seams.length === 0 ? '' : `${sew} of ${seams.length} seams match`;
  const heed = warnings === 0 ? '' : `${warnings} ${warnings === 1 ? 'warning' : 'warnings'} to look at`;
  const said = [walked, heed].filter(Boolean).join('; ');
  return said ? `<p class="verdict ${warnings > 0 ? 'warning' : 'sound'}">${said}.</p>` : '';
}

function pictures({ pattern, before }: ReportSource): string {
  if (!before) return `<section id="pieces"><h2>Pieces</h2>${picturesHtml([{ pattern }]).join('')}</section>`;
  const [then, now] = picturesHtml([{ pattern: before }, { pattern, before }]);
  return `<section id="pieces"><h2>Before and after</h2><h3>Before</h3>${then}<h3>After</h3>${now}<p class="key">All to one scale. Solid: cutting line; dashed: stitching line; dotted: the stitching line before.</p></section>`;
}

const sectionHtml = ({ id, title, blocks }: Section): string =>
  `<section id="${escaped(id)}"><h2>${escaped(title)}</h2>${blocks.map(blockHtml).join('')}</section>`;

function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'text':
      return `<p>${escaped(block.text)}</p>`;
    case 'table':
      return tableHtml(block.columns, block.rows);
    case 'steps':
      return `<ol class="steps">${block.items.map(i => `<li>${escaped(i.text)}${i.detail ? `<div class="detail">${escaped(i.detail)}</div>` : ''}</li>`).join('')}</ol>`;
    case 'cautions':
      return `<ul class="cautions">${block.items.map(i => `<li>${escaped(i)}</li>`).join('')}</ul>`;
    case 'findings':
      return `<ul class="findings">${block.items
        .map(
          f =>
            `<li class="${f.severity}"><b>${words[f.severity]}${f.where ? `, ${escaped(f.where)}` : ''}</b> ${escaped(f.message)} <span class="detail">${escaped(f.remedy)}</span></li>`,
        )
        .join('')}</ul>`;
  }
}

const words = { fault: 'Will not sew', warning: 'Warning', note: 'Note' } as const;

function tableHtml(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const cell = (tag: 'th' | 'td') => (text: string, i: number) =>
    `<${tag}${columns[i]!.align === 'right' ? ' class="right"' : ''}>${escaped(text)}</${tag}>`;
  const head = columns.map((c, i) => cell('th')(c.title, i)).join('');
  const body = rows
    .map((r, i) => `<tr${rows[i + 1]?.[0] === '' ? ' class="same"' : ''}>${r.map(cell('td')).join('')}</tr>`)
    .join('');
  // A short table stays on one page in print.
  const short = rows.length <= 12 ? ' class="short"' : '';
  return `<table${short}><thead><tr>${head}</tr></thead><tbody>${body}</tbody></table>`;
}
