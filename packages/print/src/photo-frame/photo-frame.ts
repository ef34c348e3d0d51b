import { at, type Point, polyline } from '@paperhinge/geometry';
import {
  checkedSquare,
  type FramePaper,
  type FrameSheet,
  framePapers,
  sheetsInFrame,
  targetIndex,
  targetPlaces,
} from '@paperhinge/geometry/trace';
import type { Ink, TypeMeasure } from '../drawing/ink.js';
import { setCentred, setLine, wrapped } from '../drawing/lettering.js';
import { stroke } from '../drawing/shapes.js';
import { requireWords } from '../option-words.js';
import { pageFormat } from '../pages/format.js';
import { paperName, paperOf } from '../pages/papers.js';
import { type FontFiles, type Typefaces, typefacesOf } from '../pdf/typefaces.js';
import { refusal } from '../tellings.js';
import type { PhotoFrameWords } from '../words/page-words.js';
import { type PageLanguage, readerOf } from '../words/reader.js';
import { targetInk } from './target-ink.js';

/** What a maker may choose of a photo frame. */
export interface PhotoFrameOptions {
  readonly paper: FramePaper;
  /** How many sheets, 4 to 9. */
  readonly sheets: number;
  /** Of the words. Default English. */
  readonly language?: PageLanguage;
  /** Without, a carried font that has the Latin letters. */
  readonly fonts?: FontFiles | Typefaces;
}

/**
 * The sheets of a photo frame as a PDF at true scale, one a page: targets that a photograph is measured by, all
 * different, and on each sheet a square of 50 mm that shows whether the printer kept the scale. Same input, same bytes.
 * @throws PatternError `photo-frame-paper`, `photo-frame-sheets`, `word-not-understood`, `font-not-usable`
 */
export async function photoFrame(options: PhotoFrameOptions): Promise<Uint8Array> {
  const { paper, sheets, language, fonts } = options;
  requireWords(options);
  if (!Object.hasOwn(framePapers, paper)) throw refusal('photo-frame-paper', {});
  if (!(Number.isInteger(sheets) && sheets >= fewest && sheets <= sheetsInFrame))
    throw refusal('photo-frame-sheets', { fewest, most: sheetsInFrame });
  const { words } = readerOf('mm', language);
  const said = words.photoFrame;
  const typefaces = await typefacesOf(fonts, () => [
    JSON.stringify(said.lines(sheetsInFrame)),
    said.sheet(7, 9),
  ]);
  const format = pageFormat(paperOf(paper), 'portrait', { margins: 0, overlap: 0 });
  const middle = at(format.size[0] / 2, format.size[1] / 2);
  const pages = Array.from({ length: sheets }, (_, i) => ({
    own: { inks: sheetInks({ paper, number: i + 1 }, sheets, middle, { said, measure: typefaces }) },
  }));
  const { pdfDocument } = await import('../pdf/document.js');
  return pdfDocument(
    {
      title: said.title(sheets, paperName(paper, words.paper)),
      subject: said.subject,
      language: words.language,
      format,
      sheet: { inks: [] },
      pages,
    },
    typefaces,
  );
}

/** A photograph of fewer says too little of lens and slant. */
const fewest = 4;

function sheetInks(
  sheet: FrameSheet,
  sheets: number,
  middle: Point,
  { said, measure }: { readonly said: PhotoFrameWords; readonly measure: TypeMeasure },
): readonly Ink[] {
  const corner = at(middle.x - 48, middle.y - checkedSquare / 2),
    beside = corner.x + checkedSquare + 5;
  const to = (u: number, v: number) => at(corner.x + u * checkedSquare, corner.y + v * checkedSquare);
  const lines = said
    .lines(sheetsInFrame)
    .flatMap(text => [...wrapped(measure, text, { size: wordSize, room: wordRoom }), '']);
  return [
    ...targetPlaces.map((_, place) => targetInk(targetIndex(sheet, place), place, middle)),
    stroke('test-square', polyline(to(0, 0), to(1, 0), to(1, 1), to(0, 1), to(0, 0))),
    setCentred(
      measure,
      String(sheet.number),
      { role: 'text', size: 16, weight: 'bold' },
      to(0.5, 0.4),
      at(1, 0),
    ),
    setCentred(measure, '50 mm × 50 mm', { role: 'text', size: 3.4 }, to(0.5, 0.72), at(1, 0)),
    setLine(
      measure,
      said.sheet(sheet.number, sheets),
      { role: 'text', size: 4.4, weight: 'bold' },
      at(beside, corner.y + 3.2),
    ),
    ...lines.map((text, i) =>
      setLine(
        measure,
        text,
        { role: 'text', size: wordSize },
        at(beside, corner.y + 9 + i * wordSize * 1.25),
      ),
    ),
  ];
}

/** mm. */
const wordSize = 3;
/** mm: words beside the square keep clear of the targets. */
const wordRoom = 45;
