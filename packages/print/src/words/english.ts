import type { Cutting } from '@paperhinge/geometry';
import { sizesBetween } from '@paperhinge/geometry/internal';
import { layers } from '../layers.js';
import type { PageWords } from './page-words.js';

const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
const namesCloth = /fabric|cloth|lining|interfacing|stabiliser/i;
const cloth = (name: string): string => (name === '' || namesCloth.test(name) ? name : `${name} fabric`);
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
const sorted = (noun: string) => (sort: string) => [sort, noun].filter(Boolean).join(' ');

/** ", 2 mirrored, in 2 layers" after how many there are. */
function howCut({ count, mirrored, layers: deep = 1 }: Cutting, fold: boolean): string {
  const turned = mirrored && count >= 2 ? `, ${Math.floor(count / 2)} mirrored` : '';
  return `${fold ? ' on fold' : turned}${deep > 1 ? `, in ${deep} layers` : ''}`;
}

/** English, which every page is set in unless another language is asked for. */
export const english: PageWords = {
  language: 'en',
  decimalSign: '.',
  layers: Object.fromEntries(layers.map(layer => [layer, layer])) as PageWords['layers'],
  paper: { us: name => `US ${name}`, roll: inches => `${inches} in roll` },
  piece: {
    cut: (cutting, fold) => `cut ${cutting.count}${howCut(cutting, fold)}`,
    count: (cutting, fold) => `${cutting.count}${howCut(cutting, fold)}`,
    cutOf: (cutting, fold) =>
      `cut ${cutting.count}${cutting.fabric ? ` of ${cutting.fabric}` : ''}${howCut(cutting, fold)}`,
    cloth,
    rightSideUp: 'right side up only',
    size: name => {
      const pair = sizesBetween(name);
      return pair ? `between sizes ${pair[0]} and ${pair[1]}` : `size ${name}`;
    },
    placeOnFold: 'place on fold',
    hem: width => `hem ${width}`,
    finish: {
      'turned once': 'turned once',
      'turned twice': 'turned twice',
      rolled: 'rolled',
      faced: 'faced',
      bound: 'bound',
      banded: 'banded',
    },
    topstitched: distance => `topstitch at ${distance}`,
    interfaced: width => `interface ${width}`,
    takenUp: {
      eased: to => `ease to ${to}`,
      gathered: to => `gather to ${to}`,
      stretched: to => `stretch to ${to}`,
      pleated: to => `pleat to ${to}`,
    },
    pleat: { knife: 'knife pleat', box: 'box pleat', inverted: 'inverted pleat', tuck: 'tuck' },
    stitchedDown: length => `stitch ${length} down`,
    greatestStretch: 'greatest stretch',
    stretchesMost: { across: 'greatest stretch across the grain', along: 'greatest stretch along the grain' },
    fastening: {
      zip: sorted('zip'),
      buttons: sorted('buttons'),
      hooks: sorted('hooks'),
      snaps: sorted('snaps'),
      elastic: sorted('elastic'),
      drawcord: sorted('drawcord'),
    },
    opening: length => `opening ${length}`,
    line: {
      grain: 'grain',
      level: 'level',
      'lengthen-shorten': 'lengthen or shorten here',
      fold: 'fold',
      placement: 'placement',
      style: 'style line',
      dart: 'dart',
    },
    lengthenHere: 'lengthen or shorten here',
    lengthenShort: 'lengthen, shorten',
    lengthenTo: (distance, to) =>
      `lengthen or shorten here · ${distance} to the ${to === 'hem' ? 'hem' : 'lower edge'}`,
    lengthenBy: distance => `lengthen or shorten here · ${distance}`,
  },
  page: {
    numbered: (page, of) => `page ${page} of ${of}`,
    atFullSize: 'print at 100 %, not fitted to the page',
    corrected: (across, down) =>
      `print at 100 %: already corrected for this printer (${across} across, ${down} down)`,
    printOn: (paper, scale) => `${paper}, ${scale}`,
    subject: pieces => `Sewing pattern at true scale: ${pieces}`,
    glueHere: page => [`glue ${page} here, its edge on the line`, `glue ${page} here`, page],
    layOver: page => `cut on this edge, lay over ${page}`,
    blank: 'any blank sheet will do',
    blankOnMap: 'any blank sheet',
    sheet: (number, name) => [`Sheet ${number}`, name].filter(Boolean).join(': '),
  },
  cover: {
    map: 'Page map',
    checkScale: 'Check the scale first',
    thisSquare: size => `this square is ${size}`,
    twoInches: '2 inches',
    oneSheet: 'one sheet',
    pages: (all, tiles, least, blank) =>
      `${all} pages: ${tiles} to join${blank > 0 ? `, ${blank} of them blank` : ''} (the pieces’ area alone would fill ${least})`,
    printFirst: several =>
      several
        ? 'Print page 1, this one, alone first, at 100 % (“actual size”): no fitting to the page.'
        : 'Have it printed at 100 % (“actual size”): no fitting to the page.',
    measureSquare: several =>
      several
        ? 'Measure both sides of a square. Only if they are right, print the rest; else no piece will fit.'
        : 'Measure both sides of a square before you cut. If they are not right, no piece will fit.',
    corrected: (across, down) =>
      `The pages are corrected for this printer already: ${across} across, ${down} down. Print at 100 %; the squares must now be right.`,
    notQuite:
      'Off by a little, and the printer has no setting for it? Print again with what the square measured, across and down, and the pages come out true.',
    joinOverlapping:
      'Cut each page on its left and upper edge, lay it over its neighbour’s strip to the dotted line; the diamonds close and carry one name.',
    joinEdgeToEdge:
      'Cut each page on its edge and lay them edge to edge; the diamonds close and carry one name.',
    blanks:
      'A page named “any blank sheet” has no line on it: any empty sheet of the paper can take its place.',
    onePiece: 'One piece only? Print the pages that the cutting list names beside it.',
  },
  report: {
    pattern: 'Pattern',
    alteredFrom: name => `altered from ${name}`,
    sheetName: name => `sheet ${name}`,
    wearer: name => `for ${name}`,
    sections: {
      pieces: 'Pieces',
      cutting: 'Cutting list',
      cloth: 'Cloth to buy',
      bands: 'Bands and strips',
      order: 'Order of work',
      findings: 'Checks',
      cautions: 'Cautions',
      steps: 'What was altered',
      girths: 'Girths',
      edges: 'Edges before and after',
      names: 'What each edge is called, and where it begins',
      seams: 'Seams',
    },
    columns: {
      piece: 'Piece',
      cut: 'Cut',
      cloth: 'Fabric',
      pages: 'Pages',
      allowances: 'Allowances',
      figure: 'What',
      measure: 'Cut at',
      level: 'Level',
      body: 'Body',
      before: 'Before',
      after: 'After',
      ease: 'Ease',
      edge: 'Edge',
      change: 'Change',
      allowance: 'Allowance',
      seam: 'Seam',
      oneSide: 'One side',
      otherSide: 'Other side',
      difference: 'Difference',
      easeWanted: 'Ease wanted',
      result: 'Result',
      width: 'Width',
      laid: 'Laid',
      takes: 'Pieces take',
      buy: 'Buy',
    },
    bandFigures: { length: 'length', width: 'width', quarterMark: 'quarter mark' },
    cloth: {
      nap: of => `${capital(of)} has a nap: lay all its pieces one way, their tops towards the same end.`,
      repeat: (of, repeat, pieces, more) =>
        `${capital(of)} repeats every ${repeat}: match it at the notches of the seams. By common practice that takes one repeat more for each piece that must match, ${
          pieces === 1
            ? `${more} for the one piece`
            : `${more} if ${pieces === 2 ? 'both' : `all ${pieces}`} must`
        }.`,
      laid: {
        folded: 'folded lengthwise, two layers',
        open: 'opened out, one layer; pieces on the fold whole, pairs one by one turned over',
        either: 'folded lengthwise or opened out, both ways the same',
      },
      reckoned: (selvedge, spare, step) =>
        `Grain along the cloth; ${selvedge} at each selvedge not cut into. To buy is ${spare} more than the pieces take (with a repeat for each piece where the cloth repeats), rounded up to the next ${step}. Cloth that shrinks: wash it before you cut, and buy as much more as it shrinks.`,
    },
    allSound: 'Every seam was walked and every check passed.',
    severity: { fault: 'Will not sew', warning: 'Warning', note: 'Note' },
    step: number => `step ${number}`,
    gone: 'gone',
    made: 'new',
    sews: 'sews',
    doesNotMatch: 'does not match',
    faults: count =>
      `${count === 1 ? 'One thing' : `${count} things`} will not sew or fit yet: see the checks.`,
    seamsMatch: (matching, all) => `${matching} of ${all} seams match`,
    warnings: count => `${plural(count, 'warning', 'warnings')} to look at`,
    before: 'Before',
    after: 'After',
    beforeAndAfter: 'Before and after',
    namesKey:
      'Each edge by the name that a sheet uses; the arrow stands at its start, from which shares and lengths are counted.',
    key: 'All to one scale. Solid: cutting line; dashed: stitching line; dotted: the stitching line before.',
    contents: 'Contents',
    foot: 'Measure one printed square before you cut.',
  },
  projector: {
    title: name => `${name} (projector)`,
    subject: 'Sewing pattern at true scale on one page, to be projected or cut',
    setUp: (square, diagonal, step) =>
      `Set the projector so that this square measures ${square} on every side and ${diagonal} along both diagonals. Then the grid’s squares are ${step}: lay a ruler on them in all corners. Show the page at actual size; cut along the middle of the heavy line.`,
    thisSheet: size => `This sheet: ${size}`,
  },
  photoFrame: {
    title: (sheets, paper) => `Photo frame, ${sheets} sheets of ${paper}`,
    subject: 'Sheets to lay round pattern pieces that are photographed',
    sheet: (number, of) => `Photo frame ${number} of ${of}`,
    lines: most => [
      'Print at actual size. Each side of this square is 50 mm; if it measures otherwise, say what it measures when you trace.',
      `Lay at least four sheets (up to ${most}) flat round and between the pieces, touching none, each once.`,
    ],
  },
};
