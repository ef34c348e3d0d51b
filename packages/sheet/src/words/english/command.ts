import type { CommandSentences, CommandTellings } from '../../command-sayings.js';
import { capital } from '../capital.js';
import type { Sentences, Tellings } from '../catalogue.js';
import { shownName } from '../names.js';
import { namingSentences } from './naming.js';
import { fileKinds } from './sheet-text.js';
import { traceSentences, traceTellings } from './trace.js';

const another = 'Give another output folder.';
const held = {
  pages: 'pages',
  frame: 'pages (.pdf)',
  drawing: 'an SVG drawing',
  picture: 'a PNG picture',
  sheet: 'a sheet (.yaml)',
};

export const command: Tellings<CommandTellings> = {
  ...traceTellings,
  'file-not-found': ({ what }) => ({
    message: `The ${what} does not exist.`,
    remedy: 'Check its name and its folder.',
  }),
  'file-not-readable': ({ what, system }) => ({
    message:
      system === undefined ? `The ${what} may not be read.` : `The ${what} could not be read (${system}).`,
    remedy: system === undefined ? 'Check who may read the file.' : 'Check the file and its disk.',
  }),
  'not-a-file': ({ what, folder }) => ({
    message: `The ${what} is ${folder ? 'a folder' : 'not an ordinary file'}.`,
    remedy: folder ? 'Give the file itself.' : 'Give a file on disk.',
  }),
  'input-too-large': ({ what, mostMegabytes }) => ({
    message: `The ${what} is over ${mostMegabytes} MB.`,
    remedy: `Give a ${what}; they are far smaller.`,
  }),
  'file-empty': ({ what }) => ({
    message: `The ${what} is empty.`,
    remedy: `Give a ${what} with something in it.`,
  }),
  'not-utf-8': ({ what }) => ({
    message: `The ${what} is not text in UTF-8.`,
    remedy: 'Save it as plain text in UTF-8.',
  }),
  'not-a-record': () => ({
    message: 'This is not the record of an alteration, or one of an older version.',
    remedy: 'Give the record.json that alter wrote; alter the sheet again, if it is an older one.',
  }),
  'not-a-pattern': ({ looksLike }) => ({
    message: `This is not a pattern but ${fileKinds[looksLike]}.`,
    remedy: {
      sheet: 'Give the drawing it names after "pattern:", or use alter for the sheet.',
      drawing: 'Give a pattern drawing (SVG).',
      pdf: 'Make a pattern of it first: paperhinge trace FILE.pdf -o PATTERN.svg.',
      picture: 'Trace it (paperhinge trace for a photograph), and give the SVG.',
      record: 'Give altered.svg from the same folder.',
      archive: 'Unpack it, and give the SVG in it.',
      dxf: 'Make a pattern of it first: paperhinge trace FILE.dxf -o PATTERN.svg.',
    }[looksLike],
  }),
  'output-not-a-folder': ({ onTheWay }) =>
    onTheWay
      ? { message: 'The output folder cannot be made: a file stands on the way to it.', remedy: another }
      : { message: 'This is a file, not a folder.', remedy: 'Give the name of a folder.' },
  'output-is-a-folder': () => ({
    message: 'A folder stands where this file is to be written.',
    remedy: another,
  }),
  'input-would-be-overwritten': () => ({
    message: 'This output would overwrite an input.',
    remedy: another,
  }),
  'output-not-written': ({ system }) =>
    system === 'ENAMETOOLONG'
      ? {
          message: 'The name of the output is longer than the disk takes.',
          remedy: 'Give it a shorter name after -o.',
        }
      : {
          message: `The output folder could not be written to (${system}).`,
          remedy: 'Check who may write there and whether the disk is full.',
        },
  'folder-unnamed': () => ({
    message: 'The output folder has no name.',
    remedy: 'Name it after -o; "." is this folder.',
  }),
  'output-unnamed': ({ such }) => ({
    message: 'The output file has no name.',
    remedy: `Name it, such as ${such}.`,
  }),
  'output-of-another-kind': ({ holds, ending, write }) =>
    holds === 'pages'
      ? {
          message: `A pattern is not printed as ${shownName(ending)}.`,
          remedy: `Write -o ${shownName(write)}, or a name that ends in .dxf for another program.`,
        }
      : {
          message: `This file will hold ${held[holds]}; a name that ends in ${shownName(ending)} says otherwise.`,
          remedy: `Call it ${shownName(write)}.`,
        },
  'folder-named-as-file': ({ ending }) => ({
    message: `Several files are written, but the output is named like one file (${shownName(ending)}).`,
    remedy: 'Give the name of a folder after -o, such as out.',
  }),
  'dxf-has-no-paper': () => ({
    message: 'A DXF file has neither paper nor projector.',
    remedy: 'Leave out --paper and --projector, or give an output that ends in .pdf.',
  }),
  'no-pattern-to-print': () => ({
    message: 'There is no pattern to print.',
    remedy: 'Give the pattern SVG, or --photo-frame.',
  }),
  'photo-frame-of-no-pattern': () => ({
    message: 'A photo frame is printed without a pattern.',
    remedy: 'Leave out the pattern, or --photo-frame and --sheets.',
  }),
  arguments: ({ said }) => ({ message: capital(said), remedy: 'See paperhinge --help.' }),
  'answer-not-written': ({ system }) => ({
    message: `The answer could not be written (${system}).`,
    remedy: 'Check where the output of the command leads, and whether the disk is full.',
  }),
};

const count = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`;
const joined = (parts: readonly (string | false)[]) => parts.filter(part => part !== false).join(', ');
const none = '';

export const commandSentences: Sentences<CommandSentences> = {
  ...namingSentences,
  ...traceSentences,
  'reading-sheet': () => 'Reading the sheet',
  'reading-pattern': () => 'Reading the pattern',
  altering: () => 'Altering',
  'laying-out': ({ on }) => `Laying out the pages on ${on.join(', ')}`,
  'laying-out-one-sheet': () => 'Laying out the sheet',
  'flattening-lines': () => 'Flattening the lines',
  writing: () => 'Writing',
  'in-brackets': ({ step, piece, edge }) =>
    joined([
      step !== undefined && `step ${step}`,
      piece !== undefined && `piece ${shownName(piece)}`,
      edge !== undefined && `edge ${shownName(edge)}`,
    ]),
  severity: ({ severity }) => severity,
  'steps-done': ({ title, steps, sheet, off }) =>
    `${title}: ${count(steps, 'step')} of ${sheet} done${off > 0 ? `, ${off} switched off` : none}.`,
  'edges-as-drawn': () => 'Edges as drawn',
  before: () => 'before',
  after: () => 'after',
  new: () => 'new',
  gone: () => 'gone',
  'no-edge-changed': () => 'No edge changed its length.',
  'more-edges': ({ more }) => `and ${count(more, 'more edge')} in record.json`,
  'cut-size': ({ piece, kind, lengthMm, widthMm, fabric, stretchPercent }, say) =>
    `${say.name(piece)}: cut ${say.length(lengthMm)} × ${say.length(widthMm)} of ${say.name(fabric)} (${kind})${stretchPercent === undefined ? none : `; its sewn part stretches by ${say.percent(stretchPercent)}`}`,
  'cloth-to-buy': ({ cloth, widthMm, buyMm, laid }, say) =>
    `Buy ${say.cloth(buyMm)} of ${say.name(cloth)} ${say.length(widthMm)} wide, ${laid === 'open' ? 'opened out' : 'folded lengthwise'}.`,
  'hem-sweep': ({ edges, beforeMm, afterMm = 0 }, say) =>
    `Hem all round (${edges.map(say.shortly).join(' + ')}): ${beforeMm === undefined ? none : `${say.length(beforeMm)}, now `}${say.length(afterMm)}`,
  'girth-at': ({ level }, say) => `${say.name(level)} girth`,
  'girth-figures': ({ beforeMm, afterMm, bodyMm, easeMm }, say) =>
    joined([
      beforeMm !== undefined && say.length(beforeMm),
      afterMm === undefined ? 'gone' : `now ${say.length(afterMm)}`,
      bodyMm !== undefined && `body ${say.length(bodyMm)}`,
      easeMm !== undefined && `ease ${say.length(easeMm)}`,
    ]),
  'seams-matching': ({ matching, seams }) => `Seams: ${matching} of ${seams} match.`,
  'more-findings': ({ more }) => `${count(more, 'more finding')} in report.html.`,
  'notes-in-report': ({ notes }) => `${count(notes, 'note')} in report.html.`,
  'more-cautions': ({ more }) => `${count(more, 'more caution')} in report.html.`,
  'files-in': ({ folder, files }) => `Files in ${folder}: ${files.join(', ')}`,
  'not-of-this-run': ({ files }) => `Not of this run: ${files.join(', ')}`,
  'inches-rounded': () => 'Inches are to the nearest 1/8; record.json has the exact millimetres.',
  seam: () => 'seam',
  'one-side': () => 'one side',
  'other-side': () => 'other side',
  difference: () => 'difference',
  'ease-wanted': ({ easeMm }, say) => `${say.change(easeMm)} wanted`,
  matches: () => 'matches',
  'does-not-match': () => 'DOES NOT MATCH',
  'no-seams': () => 'has no seams',
  'will-not-sew': () => 'It will not sew as it is.',
  'nothing-in-the-way': () => 'Nothing stands in the way of sewing it.',
  'seams-not-checked': () =>
    'Whether it sews together cannot be said: it tells no seams. Name them in the drawing or under "seams:" in a sheet.',
  'each-piece-as-drawn': ({ pattern }) => `${pattern}, each piece as drawn`,
  'within-stitching-line': ({ piece, areaMm2 }, say) =>
    `${piece}: ${say.number(areaMm2 / 100)} cm² within the stitching line`,
  'with-allowance': ({ allowanceMm }, say) => `allowance ${say.allowance(allowanceMm)}`,
  'dart-named': ({ dart }) => `dart ${dart}`,
  'with-legs': ({ firstMm, secondMm }, say) => `legs ${say.length(firstMm)} and ${say.length(secondMm)}`,
  'no-shapes': () => 'The drawing shows no shapes.',
  'shape-headings': () => 'shape\nid\nlength\narea',
  'open-shape': () => 'open',
  'pages-of': ({ pages, paper }) => `${count(pages, 'page')} of ${paper}`,
  'projector-page': ({ widthMm, heightMm }, say) =>
    `1 page of ${say.length(Math.round(widthMm))} × ${say.length(Math.round(heightMm))} for a projector`,
  'pieces-written': ({ pieces }) => count(pieces, 'piece'),
  'wrote-sheet': ({ steps, file }) => `${count(steps, 'step')} in ${file}`,
  'in-files': ({ what, files }, say) => `${what.map(say.saying).join(', ')} in ${files.join(', ')}`,
  'fails-check': ({ faults }) =>
    `Before you cut: paperhinge check finds ${count(faults, 'thing')} that will not sew in this pattern.`,
};
