import { at } from '@paperhinge/geometry';
import type { Drawing, TypeMeasure } from '../drawing/ink.js';
import { makersSections } from '../report/written.js';
import { type Head, headSlabs, roomForTwo } from './head.js';
import { type MapPiece, mapSlab } from './page-map.js';
import { rulerInks } from './scale-check.js';
import { beside, dealt, type Slab, space, stacked, textSlab } from './stack.js';
import { sectionSlabs } from './written-slabs.js';

export interface CoverInput extends Head {
  /** mm that the cover has to lie in. */
  readonly room: { readonly width: number; readonly height: number };
  readonly pieces: readonly (MapPiece & { readonly piece: string })[];
  /** The name of a sheet where there are several. */
  readonly sheetName: (sheet: number) => string;
  /** Which pages a piece is on, in words. */
  readonly pagesOf: (piece: string) => string;
}

/** mm at the right of the first page for the upright ruler. */
const rulerRoom = 13;

/** The cover pages, each in its window's coordinates: scale check and map first, then what the maker works by. */
export function coverPages(input: CoverInput, measure: TypeMeasure): readonly Drawing[] {
  const { format, room, source } = input;
  const first = room.width - rulerRoom;
  const sections = makersSections(source, input.pagesOf);
  const [cutting, ...rest] = sections;
  const mapWidth = first * 0.46,
    listWidth = first * 0.5;
  const list = cutting ? stacked(...sectionSlabs(measure, cutting, listWidth)) : space(0);
  const head = stacked(...headSlabs(input, first, measure));
  const map = {
    pages: input.pages,
    overlap: format.field.overlap,
    pieces: input.pieces,
    sheetName: input.sheetName,
    blank: input.reader.words.page.blankOnMap,
  };
  const mapIn = (width: number) =>
    mapSlab(measure, map, width, [
      mapHeight(room.height),
      Math.max(room.height - head.height - headingRoom, mapHeight(room.height)),
      room.height - headingRoom,
    ]);
  const headedMap = (slab: Slab, width: number) =>
    stacked(space(3.4), headed(measure, input.reader.words.cover.map, width), slab);
  const narrow = mapIn(mapWidth);
  const sideBySide =
    first >= roomForTwo &&
    narrow.legible &&
    list.height <= Math.max(mapHeight(room.height) + 12, narrow.height + headingRoom);
  const slabs: readonly Slab[] = [
    head,
    ...(sideBySide
      ? [beside([0, headedMap(narrow, mapWidth)], [first - listWidth, list])]
      : [headedMap(mapIn(first), first), ...(cutting ? sectionSlabs(measure, cutting, first) : [])]),
    ...rest.flatMap(s => sectionSlabs(measure, s, first)),
  ];
  return dealt(slabs, room.height).map((page, i): Drawing => {
    const stack = stacked(...page);
    const ruler = i === 0 ? rulerInks(measure, at(room.width - 5, 4), at(0, 1), room.height - 8) : [];
    return { inks: [...stack.draw(0, 0), ...ruler] };
  });
}

/** mm above a map that fills a page: its heading. */
const headingRoom = 14;

const mapHeight = (height: number): number => Math.min(height * 0.36, 100);

const headed = (measure: TypeMeasure, title: string, width: number): Slab =>
  stacked(textSlab(measure, title, { width, size: 4.3, weight: 'bold' }), space(1.6));
