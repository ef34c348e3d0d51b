import { requireWhole } from '@paperhinge/geometry/internal';
import { escaped } from '../drawing/escape.js';
import { namedEdgesStyle, namedEdgesSvg } from '../drawing/named-edges.js';
import type { ReportWords } from '../words/page-words.js';
import type { Block, Section } from './document.js';
import { layPicturesHtml } from './lay-pictures.js';
import { picturesHtml } from './picture.js';
import type { ReportSource } from './source.js';
import { reportStyle } from './style.js';
import { readerFor, writtenReport } from './written.js';

/**
 * The record as one page of HTML that stands alone: no script, nothing fetched, every name escaped. Reads well on a
 * screen and prints well on paper. The same words as the cover of the printed pages, and every figure behind them.
 * @throws PatternError what a piece's cutting line refuses
 */
export function reportHtml(source: ReportSource): string {
  requireWhole(source.pattern);
  if (source.before !== undefined) requireWhole(source.before);
  const written = writtenReport(source);
  const reader = readerFor(source);
  const { words } = reader;
  const title = escaped(written.title);
  const sections = [
    pictures(source, words.report),
    ...written.sections.map(s => sectionHtml(s, s.id === 'cloth' ? layPicturesHtml(source, reader) : '')),
    namedEdges(source, words.report),
  ];
  const links = [
    link('pieces', source.before ? words.report.beforeAndAfter : words.report.sections.pieces),
    ...written.sections.map(s => link(s.id, s.title)),
    link('names', words.report.sections.names),
  ];
  return `<!doctype html>
<html lang="${words.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${title}</title>
<style>${reportStyle}${namedEdgesStyle}</style>
</head>
<body>
<main>
<header>
<h1>${title}</h1>
${written.facts.length > 0 ? `<p class="facts">${written.facts.map(escaped).join(' · ')}</p>` : ''}
${verdict(source, words.report)}
</header>
<nav aria-label="${escaped(words.report.contents)}">${links.join('')}</nav>
${sections.join('\n')}
<footer>${escaped(words.report.foot)}</footer>
</main>
</body>
</html>
`;
}

/** The pieces with the names of their edges. */
const namedEdges = ({ pattern }: ReportSource, words: ReportWords): string =>
  `<section id="names"><h2>${escaped(words.sections.names)}</h2><p>${escaped(words.namesKey)}</p><div class="pieces">${namedEdgesSvg(pattern, { standsAlone: false })}</div></section>`;

const link = (id: string, title: string): string => `<a href="#${id}">${escaped(title)}</a>`;

/** In one line: does it sew? */
function verdict({ record }: ReportSource, words: ReportWords): string {
  if (!record) return '';
  const count = (severity: string) => record.findings.filter(f => f.severity === severity).length;
  const faults = count('fault'),
    warnings = count('warning');
  if (faults > 0) return `<p class="verdict fault">${escaped(words.faults(faults))}</p>`;
  const seams = Object.values(record.after.seams);
  const matching = seams.filter(s => s.matches).length;
  const said = [
    seams.length === 0 ? '' : words.seamsMatch(matching, seams.length),
    warnings === 0 ? '' : words.warnings(warnings),
  ].filter(Boolean);
  const kind = warnings > 0 ? 'warning' : 'sound';
  return said.length > 0 ? `<p class="verdict ${kind}">${escaped(said.join('; '))}.</p>` : '';
}

function pictures({ pattern, before }: ReportSource, words: ReportWords): string {
  const heading = escaped(before ? words.beforeAndAfter : words.sections.pieces);
  const open = `<section id="pieces" aria-labelledby="h-pieces"><h2 id="h-pieces">${heading}</h2>`;
  if (!before) return `${open}${picturesHtml([{ pattern }]).join('')}</section>`;
  const [then, now] = picturesHtml([{ pattern: before }, { pattern, before }]);
  return `${open}<h3>${escaped(words.before)}</h3>${then}<h3>${escaped(words.after)}</h3>${now}<p class="key">${escaped(words.key)}</p></section>`;
}

const sectionHtml = ({ id, title, blocks }: Section, pictures: string): string =>
  `<section id="${escaped(id)}" aria-labelledby="h-${escaped(id)}"><h2 id="h-${escaped(id)}">${escaped(title)}</h2>${blocks.map(blockHtml).join('')}${pictures}</section>`;

function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'text':
      return `<p>${escaped(block.text)}</p>`;
    case 'table':
      return tableHtml(block);
    case 'steps':
      return `<ol class="steps">${block.items.map(i => `<li>${escaped(i.text)}${i.detail ? `<div class="detail">${escaped(i.detail)}</div>` : ''}</li>`).join('')}</ol>`;
    case 'cautions':
      return `<ul class="cautions">${block.items.map(i => `<li>${escaped(i)}</li>`).join('')}</ul>`;
    case 'findings':
      return `<ul class="findings">${block.items
        .map(
          f =>
            `<li class="${f.severity}"><b>${escaped(f.heading)}</b> ${escaped(f.message)} <span class="detail">${escaped(f.remedy)}</span></li>`,
        )
        .join('')}</ul>`;
  }
}

type Table = Extract<Block, { readonly kind: 'table' }>;

/** A table that those who see it scroll by keyboard, and those who hear it find their way in. */
function tableHtml({ caption, columns, rows }: Table): string {
  const align = (i: number) => (columns[i]!.align === 'right' ? ' class="right"' : '');
  const head = columns.map((c, i) => `<th scope="col"${align(i)}>${escaped(c.title)}</th>`).join('');
  const body = rows
    .map((cells, r) => {
      const same = rows[r + 1]?.[0] === '' ? ' class="same"' : '';
      const data = cells.slice(1).map((text, i) => `<td${align(i + 1)}>${escaped(text)}</td>`);
      const first = cells[0] === '' ? '<td></td>' : `<th scope="row">${escaped(cells[0]!)}</th>`;
      return `<tr${same}>${first}${data.join('')}</tr>`;
    })
    .join('');
  // A short table stays on one page in print.
  const short = rows.length <= 12 ? ' class="short"' : '';
  return `<div class="scroll" role="group" tabindex="0" aria-label="${escaped(caption)}"><table${short}><caption>${escaped(caption)}</caption><thead><tr>${head}</tr></thead><tbody>${body}</tbody></table></div>`;
}
