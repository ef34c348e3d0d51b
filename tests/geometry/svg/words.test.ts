import { PatternError } from '@paperhinge/geometry';
import type { PatternTellings, SvgTellings } from '@paperhinge/geometry/sayings';
import { catalogueOf, english, wordsOf } from '@paperhinge/sheet/words';
import { expect, test } from 'vitest';

const german = await catalogueOf('de');

type Told = SvgTellings & PatternTellings;
type Samples = { readonly [C in keyof Told]: readonly Told[C][] };

const edge = { piece: 'front', edge: 'side-upper' };
const piece = { piece: 'front' };
const path = { element: 'path' };
const words = ['knife', 'box'];
const long = `\u0007${'x'.repeat(500)}`;

/** Facts for every code; the compiler holds the list complete. */
const samples: Samples = {
  'file-too-large': [{}],
  'file-compressed': [{}],
  'encoding-unknown': [{}],
  'encoding-broken': [{}],
  'not-a-drawing': (['pdf', 'picture', 'archive', 'page', 'json', 'text', 'nothing'] as const).map(is => ({
    is,
  })),
  'not-xml': [{}],
  'not-svg': [{}],
  'too-many-elements': [{ most: 300_000 }],
  'entity-not-expanded': [{}],
  'too-many-instances': [{}],
  'too-many-segments': [{ of: 'drawing' }, { of: 'piece', most: 5000 }, { of: 'pattern', most: 25_000 }],
  'viewbox-empty': [{}],
  'scale-unsure': [{ attribute: 'viewBox' }],
  'style-rule-left-out': [{}],
  'reference-outside': [path],
  'reference-missing': [{ ...path, id: long }],
  'reference-loop': [path],
  'reference-too-deep': [{ most: 100 }],
  'path-data-broken': [
    { ...path, id: 'hem', reason: 'ends-early', drawnSoFar: true },
    { ...path, reason: 'arc-flag', drawnSoFar: false },
  ],
  'attribute-not-understood': [{ ...path, attribute: 'r', reason: 'negative', leftOut: true }],
  'shape-empty': [path],
  'hidden-left-out': [{ count: 2 }],
  'text-left-out': [{ count: 1 }],
  'more-of-a-kind': [{ more: 7, kind: 'shape-empty' }],
  'unit-not-known': [
    { attribute: 'width', isNothing: true },
    { attribute: 'height', isNothing: false },
  ],
  'size-out-of-proportion': [{ widthMm: 1240, heightMm: 493.5 }],
  'scale-not-known': [{ because: 'viewbox' }, { because: 'percent' }],
  'scale-assumed': [
    { piece: 'front', reachMm: 800, hasSize: true },
    { piece: long, reachMm: 800, hasSize: false },
  ],
  'scale-out-of-range': [{}],
  'piece-very-large': [{ piece, reachMm: 7000 }],
  'unknown-size': [
    { size: '16', sizes: ['12', '14'] },
    { size: '16', sizes: [] },
  ],
  'size-not-read': [{ size: '14' }],
  'size-not-chosen': [{ size: '12', sizes: ['12', '14'] }],
  'role-not-known': [{ words }, { words, near: 'box' }],
  'attribute-misplaced': [{ attribute: 'data-cut', places: ['piece'] }],
  'attribute-unknown': [{ attribute: 'data-x' }, { attribute: 'data-alowance', near: 'data-allowance' }],
  'attribute-misspelt': [{ attribute: 'data-peice', near: 'data-piece' }],
  'also-cut-not-understood': [{}],
  'version-not-known': [{ version: 3 }],
  'copies-count-now': [{ piece, count: 6, before: 1 }],
  'no-pieces': [{}],
  'piece-left-out': [{ piece }],
  'outside-piece': [{ what: 'dart' }],
  'duplicate-outline': [{ piece }],
  'unknown-outline': [{ piece, id: 'a', ids: ['b'] }],
  'two-outlines': [{}],
  'second-outline-left-out': [{}],
  'inner-outline-left-out': [{ count: 1 }, { count: 3 }],
  'too-many-edges': [{ most: 1000 }],
  'too-many-notches': [{}],
  'nothing-drawn': [{ what: 'mark' }, { what: 'edge', name: long }],
  'not-displayed': [{ what: 'edge', name: 'hem' }],
  'short-side-dropped': [{ lengthMm: 0.02 }],
  'drawing-not-read': [{ count: 1 }, { count: 4 }],
  'fold-not-straight': [{ edge, bowMm: 1.2 }],
  'allowance-not-given': [{ edge, attribute: 'data-allowance' }],
  'metadata-not-json': [{ reason: 'character-expected', character: ':' }, { reason: 'key-twice' }],
  'metadata-not-understood': [
    { part: 'object' },
    { part: 'ease', of: { seam: 'side' } },
    { part: 'word', of: { fabric: 'main' }, key: 'role', words, near: 'box' },
  ],
  'metadata-not-read': [
    { key: 'fabric', keys: ['fabrics'] },
    { key: 'zz', keys: ['kind'], of: { fastening: 'zip' } },
  ],
  'run-direction-not-given': [{ seam: { seam: 'side' }, edge, ends: ['hem', long] }],
  'name-not-writable': [{ name: long }],
  'length-not-understood': [{}, { attribute: 'data-opening' }],
  'length-out-of-range': [{}, { attribute: 'data-opening' }],
  'percent-not-understood': [{ lacksSign: false }, { lacksSign: true, write: '80 %' }],
  'position-not-understood': (['from-nothing', 'share-or-length', 'any'] as const).map(form => ({ form })),
  'position-off-edge': [{}, { edge, alongMm: 120, edgeMm: 100 }],
  'ambiguous-end': [{ edge, from: 'hem' }],
  'not-a-neighbour': [{ edge, from: 'neck', neighbours: ['hem', long] }],
  'pattern-not-usable': [{ at: 'pattern.pieces.0.name' }],
  'unknown-piece': [
    { name: 'frnt', names: ['front'] },
    { name: 'x', names: [], seam: 'side' },
  ],
  'unknown-edge': [
    { piece: 'front', name: 'hm', names: ['hem'] },
    { piece: 'front', name: 'hm', names: [], seam: 'side' },
    { piece: 'front', name: 'hm', names: [], notch: true },
  ],
  'name-missing': (['piece', 'edge', 'fastening', 'outline'] as const).map(what => ({ what })),
  'duplicate-piece': [{ name: long }],
  'duplicate-seam': [{ name: 'side' }],
  'duplicate-fabric': [{ name: 'main' }],
  'duplicate-edge': [{ name: 'hem' }],
  'cut-count': [{ most: 1000 }],
  'piece-without-outline': [{}],
  'edge-without-length': [{}],
  'open-outline': [{ gapMm: 3.25, between: ['top', 'side'] }, { gapMm: 3 }, { between: ['top'] }],
  'outline-in-parts': [{ name: 'hem' }],
  'edge-names-do-not-fit': [{ edges: 4, names: 2 }],
  'dart-without-apex': [{}],
  'self-crossing': [
    { xMm: 10, yMm: 20, edges: ['a'] },
    { xMm: 10, yMm: 20, edges: ['a', 'b'] },
  ],
  'edge-in-parts': [{ name: 'hem' }],
  'allowance-out-of-range': [{ mostMm: 300 }],
  'allowance-on-fold': [{}],
  'opening-out-of-range': [{}],
  'dart-legs-differ': [
    { dart: { dart: 'bust' }, firstMm: 100, secondMm: 100.4, limitMm: 1 },
    { dart: { dart: 'bust' }, firstMm: 100, secondMm: 104, limitMm: 1 },
  ],
  'outline-without-area': [{}],
  'outline-anticlockwise': [{}],
  'notch-off-edge': [{ alongMm: 120, edgeMm: 100 }],
  'empty-seam': [{ name: 'side' }],
  'word-not-understood': [
    { attribute: 'data-kind', words },
    { attribute: 'data-line', words, near: 'box', readAs: 'style' },
  ],
  'length-not-positive': [{ attribute: 'data-topstitch' }],
  'stretch-out-of-range': [{ most: 300 }],
  'sizes-differ': [
    { part: 'pieces', sizes: ['12', '14'] },
    { part: 'lines', sizes: ['12', '14'], piece },
  ],
  'share-out-of-range': [{}],
  'unknown-level': [{ level: 'hips', names: ['hip'] }],
  'role-guessed': [{ edge, role: 'side' }],
};

const cases = (Object.entries(samples) as readonly [string, readonly object[]][]).flatMap(([code, list]) =>
  list.map((facts, i) => [`${code} ${i}`, code, facts] as const),
);

test.each(cases)('%s is told in whole sentences, in both languages and in inches', (_, code, facts) => {
  for (const catalogue of [english, german])
    for (const unit of ['mm', 'in'] as const) {
      const told = wordsOf(catalogue, unit).error(new PatternError(code, { facts: facts as never }));
      for (const text of [told.message, told.remedy]) {
        expect(text).toMatch(/^[\p{Lu}"„0-9].*[.?…]$/u);
        expect(text).not.toMatch(/undefined|\[object|NaN|\p{Cc}| {2}/u);
        expect(text.length).toBeLessThan(420);
        if (unit === 'in' && catalogue === english)
          expect(
            text.replace(/12 mm|1\.2 cm|0\.5 mm|60 mm|150 cm|in mm, cm or in|220 mm|1 mm|600mm|800mm/g, ''),
          ).not.toMatch(/\d mm\b/);
      }
    }
});
