import { type Finding, millimetresPer } from '@paperhinge/geometry';
import { lengthUnits } from '@paperhinge/geometry/pattern';
import { fileName } from './record.js';
import type { Sheet } from './sheet.js';
import { finding } from './tellings.js';

/** mm from and to, newborns and giants included; the first that fits the name of a measurement holds. */
const people: readonly (readonly [name: RegExp, least: number, most: number])[] = [
  [/^stature$/, 400, 2500],
  [/ height$/, 100, 2200],
  [/trunk/, 500, 2600],
  [/bust|chest|waist girth|hip girth|seat|abdomen/, 250, 2500],
  [/^head girth$/, 280, 720],
  [/neck.* girth/, 150, 750],
  [/girth/, 50, 1200],
  [/shoulder length/, 40, 260],
];
const anything = [60, 1500] as const;

/** Figures of the wearer that are nobody's, most likely written in another unit: doubted, not refused. */
export function wearerDoubts({ wearer, wearerUnit: own, file, places }: Sheet): readonly Finding[] {
  return Object.entries(wearer).flatMap(([measurement, bodyMm]) => {
    if (bodyMm === undefined || fits(measurement, bodyMm)) return [];
    const figure = Number((bodyMm / millimetresPer[own]).toPrecision(6));
    const likely = lengthUnits.filter(u => u !== own && fits(measurement, figure * millimetresPer[u]));
    const where = { file: fileName(file), ...places[`wearer.${measurement}`] };
    return [finding('warning', 'wearer-figure-doubted', where, { measurement, bodyMm, figure, likely })];
  });
}

function fits(measurement: string, mm: number): boolean {
  const [, least, most] = people.find(([name]) => name.test(measurement)) ?? [undefined, ...anything];
  return mm >= least && mm <= most;
}
