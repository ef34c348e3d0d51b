import { isPatternDrawing, PatternError, readPattern, readShapes } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { told, toldFinding } from '../../support/told.js';
import { inMillimetres } from './in-millimetres.js';

// A file is somebody else's: it is read, or refused with a typed error, and never quoted. What would not end fails by
// the time that every test has.

function readOrRefused(source: string | Uint8Array): { readonly code: string; readonly shapes: number } {
  let code = 'read',
    shapes = 0;
  try {
    shapes = readShapes(source, { file: 'hostile.svg' }).shapes.length;
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    expect(told(error).remedy).not.toBe('');
    code = error.code;
  }
  return { code, shapes };
}

const svgOpen = '<svg xmlns="http://www.w3.org/2000/svg">';

describe('entities', () => {
  test('a bomb of entities is not expanded', () => {
    const levels = Array.from({ length: 30 }, (_, i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`).join(
      '',
    );
    const source = `<!DOCTYPE svg [<!ENTITY l0 "lol">${levels}]>${svgOpen}<text>&l30;</text><path d="&l30;"/><rect width="1" height="1"/></svg>`;
    expect(readOrRefused(source)).toEqual({ code: 'read', shapes: 1 });
    expect(readShapes(source).findings.map(f => f.code)).toContain('entity-not-expanded');
  });

  test('an outside entity is not fetched', () => {
    const source = `<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/hostname">]>${svgOpen}<desc>&x;</desc><rect width="1" height="1"/></svg>`;
    expect(readOrRefused(source).code).toBe('read');
  });

  test('an entity in the data of a pattern’s edge is refused', () => {
    const source = `<!DOCTYPE svg [<!ENTITY x "M0 0L1 1">]>${svgOpen}<g data-piece="a"><path data-edge="b" d="&x;"/></g></svg>`;
    expect(() => readPattern(source)).toThrow(expect.objectContaining({ code: 'path-data-broken' }));
  });

  test('names that every object has are no entities', () => {
    expect(readOrRefused(`${svgOpen}<text>&constructor;&toString;&__proto__;</text></svg>`).code).toBe(
      'read',
    );
  });

  test('a namespace given by an entity is taken for SVG’s, as an old drawing program writes it', () => {
    const source =
      '<!DOCTYPE svg [<!ENTITY ns_svg "http://www.w3.org/2000/svg">]><svg xmlns="&ns_svg;"><rect width="1" height="1"/></svg>';
    expect(readOrRefused(source).shapes).toBe(1);
  });
});

describe('masses', () => {
  test('100,000 nested groups', () => {
    const n = 100_000;
    const source = `${svgOpen}${'<g data-x="1">'.repeat(n)}<rect width="1" height="1"/>${'</g>'.repeat(n)}</svg>`;
    expect(readOrRefused(source)).toEqual({ code: 'read', shapes: 1 });
    expect(() => readPattern(source)).toThrow(expect.objectContaining({ code: 'no-pieces' }));
    expect(isPatternDrawing(source)).toBe(false);
  });

  test('100,000 nested groups around a pattern', () => {
    const n = 100_000;
    const source = `${svgOpen}${'<g>'.repeat(n)}<g data-piece="p" data-allowance="1"><rect data-outline="" width="100" height="50"/></g>${'</g>'.repeat(n)}</svg>`;
    expect(readPattern(source).pattern.pieces).toHaveLength(1);
  });

  test('a path of ten megabytes', () => {
    const source = `${svgOpen}<path d="M0 0${'l1 1 -1-1'.repeat(1_100_000)}"/></svg>`;
    expect(source.length).toBeGreaterThan(9.9e6);
    expect(readOrRefused(source)).toEqual({ code: 'read', shapes: 1 });
  });

  test.each([
    ['arcs, each of which makes 45 cubics', `<path d="M0 0${'a9 9 0 111 1a9 9 0 11-1-1'.repeat(400_000)}"/>`],
    ['smooth quadratics', `<path d="M0 0${'t1 1t-1-1'.repeat(1_100_000)}"/>`],
    ['strokes of nothing', `<path d="${'M0 0z'.repeat(2_000_000)}"/>`],
    ['corners', `<polygon points="${'0 1 '.repeat(4_500_000)}"/>`],
    ['many paths of many arcs', `<path d="M0 0${'a9 9 0 111 1a9 9 0 11-1-1'.repeat(14_000)}"/>`.repeat(6)],
    ['circles by the hundred thousand', '<circle r="1"/>'.repeat(110_000)],
  ])('masses of %s are refused with the place', (_, content) => {
    expect(() => readShapes(`${svgOpen}${content}</svg>`, { file: 'hostile.svg' })).toThrow(
      expect.objectContaining({
        code: 'too-many-segments',
        where: expect.objectContaining({ file: 'hostile.svg', line: 1 }),
      }),
    );
  });

  test('half a million elements are refused', () => {
    expect(readOrRefused(`${svgOpen}${'<g/>'.repeat(500_000)}</svg>`).code).toBe('too-many-elements');
    expect(readOrRefused(`${svgOpen}${'<g>'.repeat(500_000)}`).code).toBe('too-many-elements');
  });

  test('a million cubic segments', () => {
    const source = `${svgOpen}<path d="M0 0c${'1 2 3 4 5-6 -1-2-3-4-5 6 '.repeat(500_000)}"/></svg>`;
    expect(readOrRefused(source)).toMatchObject({ shapes: 1 });
  });

  test('100,000 small shapes', () => {
    expect(readOrRefused(`${svgOpen}${'<rect width="1" height="1"/>'.repeat(100_000)}</svg>`).shapes).toBe(
      100_000,
    );
  });

  test('100,000 faults make a bounded list of findings', () => {
    const source = `${svgOpen}${'<path d="M0 0L1 1 x"/>\n'.repeat(100_000)}</svg>`;
    const { findings } = readShapes(source);
    expect(findings.length).toBeLessThan(100);
    expect(findings.at(-1)).toMatchObject({ code: 'more-of-a-kind', figures: { more: 99_950 } });
    expect(toldFinding(findings.at(-1)!).message).toBe('There are 99950 more findings like those above.');
  });

  test('a pattern of 20,000 edges that meet nowhere', () => {
    const edges = Array.from({ length: 20_000 }, (_, i) => `<path data-edge="e${i}" d="M${i} 0v1"/>`).join(
      '',
    );
    expect(() => readPattern(inMillimetres(`<g data-piece="p" data-allowance="1">${edges}</g>`))).toThrow(
      PatternError,
    );
  });

  const patternCode = (content: string): string => {
    let code = 'read';
    try {
      readPattern(inMillimetres(`<g data-piece="p" data-allowance="1">${content}</g>`));
    } catch (error) {
      if (!(error instanceof PatternError)) throw error;
      code = error.code;
    }
    return code;
  };
  const times = (n: number, one: (i: number) => string): string =>
    Array.from({ length: n }, (_, i) => one(i)).join('');

  test('a pattern of 20,000 edges between the same two points', () => {
    expect(patternCode(times(20_000, i => `<path data-edge="e${i}" d="M0 0L9 9"/>`))).toBe('too-many-edges');
    expect(patternCode(times(900, i => `<path data-edge="e${i}" d="M0 0L9 9"/>`))).toBe('outline-in-parts');
  });

  test('a pattern whose edge has a million segments, or whose every segment is beside every other', () => {
    expect(patternCode(`<path data-outline="" d="M0 0${'l1 1 -1-1'.repeat(500_000)}Z"/>`)).toBe(
      'too-many-segments',
    );
    const zigzag = times(4_000, i => `L${i % 2 ? 0 : 90} ${i / 20}`);
    expect(
      patternCode(`<path data-edge="a" d="M0 0${zigzag}"/><path data-edge="b" d="M0 199.95L-50 100L0 0"/>`),
    ).toBe('read');
  });

  test('a pattern whose outline crosses or touches itself by the million', () => {
    const edges = (points: readonly string[]): string =>
      `<path data-edge="a" d="M${points.join('L')}"/><path data-edge="b" d="M${points.at(-1)}L-300 -300L${points[0]}"/>`;
    const list = (n: number, one: (i: number) => string) => Array.from({ length: n }, (_, i) => one(i));
    // Each second corner of a star: every side crosses nearly every other.
    const star = list(4_900, i => {
      const angle = (2 * Math.PI * ((i * 2_450) % 4_901)) / 4_901;
      return `${(100 * Math.cos(angle)).toFixed(4)} ${(100 * Math.sin(angle)).toFixed(4)}`;
    });
    expect(patternCode(edges(star))).toBe('self-crossing');
    // Thousands of leaves that all begin and end in one point.
    const fan = list(4_800, i => (i % 3 === 0 ? '0 0' : `${100 + i / 1000} ${i / 30}`));
    expect(patternCode(edges(fan))).toBe('self-crossing');
    // Slanting rows, close together: their boxes overlap, they do not.
    const slanting = list(4_900, i => `${(i % 2) * 90 + i / 100} ${(i % 2) * 90 - i / 100}`);
    expect(['read', 'self-crossing']).toContain(patternCode(edges(slanting)));
  });

  test('a pattern with notches and segments by the thousand', () => {
    const edge = times(4_000, i => `L${i / 40} ${i % 2}`);
    const outline = `<path data-edge="a" d="M0 0${edge}"/><path data-edge="b" d="M99.975 1L-50 90L0 0"/>`;
    expect(patternCode(outline + times(400, i => `<path data-notch="single" d="M${i / 10} 20v5"/>`))).toBe(
      'read',
    );
    expect(patternCode(outline + times(1300, i => `<path data-notch="single" d="M${i / 10} 20v5"/>`))).toBe(
      'too-many-notches',
    );
  });

  test('a file beyond 32 MB is refused', () => {
    expect(readOrRefused(new Uint8Array(33e6)).code).toBe('file-too-large');
  });
});

describe('use', () => {
  test('that doubles at each of 40 levels', () => {
    const levels = Array.from(
      { length: 40 },
      (_, i) => `<g id="l${i + 1}"><use href="#l${i}"/><use href="#l${i}"/></g>`,
    ).join('');
    const source = `${svgOpen}<defs><rect id="l0" width="1" height="1"/>${levels}</defs><use href="#l40"/></svg>`;
    expect(readOrRefused(source).code).toBe('too-many-instances');
  });

  test('of a large path many times', () => {
    const source = `${svgOpen}<defs><path id="p" d="M0 0${'l1 1'.repeat(100_000)}"/></defs>${'<use href="#p"/>'.repeat(1000)}</svg>`;
    expect(readOrRefused(source).code).toBe('too-many-instances');
  });

  test('in a chain of 100,000', () => {
    const chain = Array.from({ length: 100_000 }, (_, i) => `<use id="u${i}" href="#u${i + 1}"/>`).join('');
    expect(readOrRefused(`${svgOpen}<defs>${chain}</defs><use href="#u0"/></svg>`).code).toBe('read');
  });

  test('of itself, through symbols and groups', () => {
    const source = `${svgOpen}<symbol id="s"><g><use href="#s"/></g><rect width="1" height="1"/></symbol><use href="#s"/></svg>`;
    expect(readOrRefused(source)).toEqual({ code: 'read', shapes: 1 });
  });
});

describe('numbers', () => {
  test.each(['1e308', '-1e308', '1e400', 'NaN', 'Infinity', '1e5000', '9'.repeat(400)])(
    '%s in every place',
    n => {
      for (const content of [
        `<path d="M0 0L${n} 0"/>`,
        `<path d="M0 0A${n} ${n} ${n} 1 1 5 5"/>`,
        `<rect width="${n}" height="1"/>`,
        `<circle r="${n}"/>`,
        `<g transform="scale(${n})"><rect width="1" height="1"/></g>`,
        `<g transform="matrix(${n} 0 0 ${n} 0 0) scale(0)"><rect width="1" height="1"/></g>`,
        `<svg viewBox="0 0 ${n} 1"><rect width="1" height="1"/></svg>`,
      ])
        readOrRefused(inMillimetres(content));
      readOrRefused(
        `<svg xmlns="http://www.w3.org/2000/svg" width="${n}" height="${n}" viewBox="0 0 ${n} 1"><rect width="1" height="1"/></svg>`,
      );
    },
  );

  test('what is read is finite', () => {
    const content =
      '<path d="M0 0A1e-300 1e-300 0 0 1 5 5"/><path d="M0 0A1e4 1 0 0 1 5 5"/><rect width="1e-320" height="1"/>';
    for (const shape of readShapes(inMillimetres(content)).shapes)
      for (const figure of [shape.lengthMm, shape.areaMm2, ...shape.boxMm])
        expect(Number.isFinite(figure)).toBe(true);
  });
});

describe('damaged files', () => {
  test.each([
    ['unclosed tags', `${svgOpen}<g><g>`],
    ['a wrong closing tag', `${svgOpen}<g></h></svg>`],
    ['control characters', `${svgOpen}<g id="\u0001"/></svg>`],
    ['a control character reference', `${svgOpen}<g id="&#1;"/></svg>`],
    ['two roots', `${svgOpen}</svg><svg/>`],
    ['a repeated attribute', '<svg id="a" id="b"/>'],
    ['no quotation marks', '<svg id=a/>'],
  ])('%s: refused with the place, not quoted', (_, source) => {
    let refused: unknown;
    try {
      readShapes(source, { file: 'x.svg' });
    } catch (error) {
      refused = error;
    }
    expect(refused).toMatchObject({
      code: 'not-xml',
      where: { file: 'x.svg', line: 1, column: expect.any(Number) },
    });
  });

  test('what a file holds is never in the message that it is no XML', () => {
    const secret = 'sesame:x:0:0';
    for (const source of [
      secret,
      `<${secret}`,
      `<svg><a></${secret}></svg>`,
      `<svg ${secret}="1" ${secret}="2"/>`,
    ]) {
      expect(() => readShapes(source)).toThrow(PatternError);
      try {
        readShapes(source);
      } catch (error) {
        const { message, remedy } = told(error as PatternError);
        expect(`${(error as Error).message} ${message} ${remedy}`).not.toContain('sesame');
      }
    }
  });

  test('a megabyte of every byte is refused', () => {
    expect(['not-xml', 'encoding-broken', 'not-a-drawing']).toContain(
      readOrRefused(Uint8Array.from({ length: 1e6 }, (_, i) => (i * 7919) % 256)).code,
    );
  });

  test('attributes called like object members do no harm', () => {
    const source = `${svgOpen}<g __proto__="1" constructor="2" data-piece="__proto__"><rect id="__proto__" width="1" height="1"/><use href="#constructor"/></g></svg>`;
    expect(readOrRefused(source)).toMatchObject({ code: 'read', shapes: 1 });
  });

  test('a style sheet and attributes made to make patterns backtrack', () => {
    const source = `${svgOpen}<style>${'a{'.repeat(50_000)}${'/*'.repeat(50_000)}</style><g style="${'transform:'.repeat(20_000)}" transform="${'scale('.repeat(20_000)}" transform-origin="${' '.repeat(50_000)}x"><rect width="${'1'.repeat(50_000)}e" height="1"/></g></svg>`;
    readOrRefused(source);
    readOrRefused(
      `<svg xmlns="http://www.w3.org/2000/svg" width="${' '.repeat(100_000)}1x" preserveAspectRatio="${' '.repeat(100_000)}"/>`,
    );
    readOrRefused(
      `${svgOpen}<rect transform="translate(${' '.repeat(100_000)}1${' ,'.repeat(1000)})" width="1" height="1"/></svg>`,
    );
  });
});
