/** A pattern and a sheet, ready to be laid on the table. */
export interface Laid {
  readonly patternName: string;
  readonly pattern: string;
  readonly sheet: string;
}

interface Raw {
  readonly default: string;
}
/** A finished garment to learn from; its files are loaded once it is asked for. */
interface Lesson {
  readonly pattern: string;
  readonly load: () => Promise<readonly [Raw, Raw]>;
}

const lessons = {
  'cellist-top': {
    pattern: 'woven-shift.svg',
    load: () =>
      Promise.all([
        import('../../../patterns/woven-shift.svg?raw'),
        import('../../../sheets/cellist-top.yaml?raw'),
      ]),
  },
  'flared-skirt': {
    pattern: 'yoke-skirt.svg',
    load: () =>
      Promise.all([
        import('../../../patterns/yoke-skirt.svg?raw'),
        import('../../../sheets/flared-skirt.yaml?raw'),
      ]),
  },
  'easy-trousers': {
    pattern: 'trousers.svg',
    load: () =>
      Promise.all([
        import('../../../patterns/trousers.svg?raw'),
        import('../../../sheets/easy-trousers.yaml?raw'),
      ]),
  },
  'childs-smock': {
    pattern: 'smock.svg',
    load: () =>
      Promise.all([
        import('../../../patterns/smock.svg?raw'),
        import('../../../sheets/childs-smock.yaml?raw'),
      ]),
  },
  'easy-shirt': {
    pattern: 'shirt.svg',
    load: () =>
      Promise.all([import('../../../patterns/shirt.svg?raw'), import('../../../sheets/easy-shirt.yaml?raw')]),
  },
} as const satisfies Readonly<Record<string, Lesson>>;

export type LessonName = keyof typeof lessons;
export const lessonNames = Object.keys(lessons) as readonly LessonName[];

/** The pattern and the sheet of a lesson. */
export async function lessonOf(name: LessonName): Promise<Laid> {
  const { pattern, load } = lessons[name];
  const [drawing, sheet] = await load();
  return {
    patternName: pattern,
    pattern: drawing.default,
    sheet: sheet.default.replace('../patterns/', '').replace(/^# yaml-language-server.*\n/, ''),
  };
}

/** The demo with one step undone: its dart is still open. */
export const firstVisit = async (): Promise<Laid> => {
  const lesson = await lessonOf('cellist-top');
  return { ...lesson, sheet: lesson.sheet.replace('into: hem }', 'into: hem, share: 0 % }') };
};
/** The step of it that is to be done. */
export const undoneStep = 1;
