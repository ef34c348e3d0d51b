import type { Thing } from '@paperhinge/geometry';
import type { Catalogue, Say } from '../catalogue.js';
import type { patternDrawings as english } from '../english/pattern-drawings.js';
import { shownName } from '../names.js';
import { instead, oneOf } from './instead.js';

/** Was von Zeichnungen von Schnitten gesagt wird: von ihren Attributen, ihren Teilen, ihren Nähten und Stoffen. */
export const patternDrawings: Pick<Catalogue['tellings'], keyof typeof english> = {
  'role-not-known': ({ near, words }, say) => ({
    message:
      'Das Wort in „data-role“ ist nicht bekannt; worauf es steht, wurde nach Name und Lage beurteilt.',
    remedy: oneOf(near, words, say),
  }),
  'attribute-misplaced': ({ attribute, places }, say) => ({
    message: `${say.written(attribute)} sagt an dieser Stelle nichts.`,
    remedy: `Setzen Sie es auf ${say.list(places.map(place => onPlaces[place] ?? place))}.`,
  }),
  'attribute-unknown': ({ attribute, near }, say) => ({
    message: `${say.written(attribute)} ist nicht bekannt und wurde nicht gelesen.`,
    remedy:
      near === undefined
        ? 'Nichts ist zu tun, wenn ein anderes Programm es geschrieben hat.'
        : `Meinten Sie ${say.written(near)}?`,
  }),
  'attribute-misspelt': ({ attribute, near }, say) => ({
    message: `Der Schnitt kann nicht gelesen werden, wohl weil ${say.written(attribute)} falsch geschrieben ist.`,
    remedy: `Schreiben Sie ${say.written(near)}.`,
  }),
  'also-cut-not-understood': () => ({
    message: 'Woraus das Teil außerdem zugeschnitten wird („data-also-cut“), wurde nicht verstanden.',
    remedy: 'Schreiben Sie wie oft aus welchem Stoff, etwa „2 lining, 1 interfacing“.',
  }),
  'version-not-known': ({ version }, say) => ({
    message: `Die Zeichnung nennt Fassung ${say.number(version)} unserer Art, Schnitte zu zeichnen; gelesen wird hier Fassung 2.`,
    remedy: 'Sehen Sie die folgenden Befunde an, oder nehmen Sie ein neueres paperhinge.',
  }),
  'copies-count-now': ({ piece, count, before }, say) => ({
    message: `${say.thing(piece)} zählt in seinen Nähten jetzt ${say.number(count)}-mal; als diese Datei geschrieben wurde, ${say.number(before)}-mal.`,
    remedy: 'Prüfen Sie, wie oft es zugeschnitten wird; nach erneutem Speichern entfällt dieser Hinweis.',
  }),
  'no-pieces': () => ({
    message: 'Die Zeichnung hat keine Schnittteile.',
    remedy:
      'Geben Sie der Gruppe jedes Teils data-piece="name", oder nennen Sie seinen Umriss im Blatt (pieces:).',
  }),
  'piece-left-out': ({ piece }, say) => ({
    message: `${say.thing(piece)} zeigt nichts und blieb weg: Es ist leer oder verborgen.`,
    remedy: 'Zeigen Sie seine Ebene im Zeichenprogramm an, oder entfernen Sie es.',
  }),
  'outside-piece': ({ what }) => ({
    message: `Außerhalb jedes Teils steht ${a[what]}; das blieb weg.`,
    remedy: 'Legen Sie es in die Gruppe seines Teils.',
  }),
  'duplicate-outline': ({ piece }, say) => ({
    message: `Das Blatt nennt einen Umriss für zwei Teile, eines davon ist ${say.thing(piece)}.`,
    remedy: 'Geben Sie jedem Teil einen eigenen Umriss.',
  }),
  'unknown-outline': ({ piece, id, ids }, say) => ({
    message: `Die Zeichnung zeigt keine Form mit der id ${say.written(id)}, die das Blatt als Umriss nennt (${say.thing(piece)}).`,
    remedy: instead(id, ids, 'ids', say),
  }),
  'two-outlines': () => ({
    message: 'Das Teil hat sowohl Kanten als auch einen geschlossenen Umriss.',
    remedy: 'Behalten Sie die Kanten (data-edge) oder den geschlossenen Pfad (data-outline), nicht beides.',
  }),
  'second-outline-left-out': () => ({
    message: 'Das Teil hat einen zweiten geschlossenen Umriss; er blieb weg.',
    remedy: 'Machen Sie ein eigenes Teil daraus.',
  }),
  'inner-outline-left-out': ({ count }) => ({
    message: `Innerhalb des Umrisses ${count === 1 ? 'liegt noch 1 Linie; sie blieb' : `liegen noch ${count} Linien; sie blieben`} weg.`,
    remedy: 'Zeichnen Sie Schlitze und Löcher als Linien (data-line="placement").',
  }),
  'too-many-edges': ({ most }, say) => ({
    message: `Das Teil hat mehr als ${say.number(most)} Kanten.`,
    remedy: 'Verbinden Sie Kanten, die als eine genäht werden.',
  }),
  'too-many-notches': () => ({
    message: 'Das Teil hat zu viele Passzeichen für so viele Punkte in seinem Umriss.',
    remedy: 'Vereinfachen Sie seine Pfade im Zeichenprogramm.',
  }),
  'nothing-drawn': ({ what, name }, say) => ({
    message: `${called(what, name, say)} zeichnet nichts und blieb weg.`,
    remedy: 'Zeichnen oder entfernen Sie es.',
  }),
  'not-displayed': ({ what, name }, say) => ({
    message: `${called(what, name, say)} ist verborgen und blieb weg.`,
    remedy: 'Zeigen Sie es im Zeichenprogramm an, oder entfernen Sie es.',
  }),
  'short-side-dropped': ({ lengthMm }, say) => ({
    message: `Der Umriss endet mit einer Linie von ${say.slight(lengthMm)}; sie blieb weg, da er schon geschlossen war.`,
    remedy: 'Verbinden Sie seine beiden letzten Punkte im Zeichenprogramm.',
  }),
  'drawing-not-read': ({ count }) => ({
    message:
      count === 1
        ? 'Eine Form des Teils hat keine Bedeutung und blieb weg.'
        : `${count} Formen des Teils haben keine Bedeutung und blieben weg.`,
    remedy:
      'Sagen Sie, was sie sind (data-line, data-mark, data-notch), oder lassen Sie sie als Zierde stehen.',
  }),
  'fold-not-straight': ({ edge, bowMm }, say) => ({
    message: `${say.thing(edge)} ist ein Stoffbruch, biegt sich aber um ${say.slight(bowMm)}.`,
    remedy: 'Zeichnen Sie ihn gerade, oder machen Sie eine Naht daraus.',
  }),
  'allowance-not-given': ({ edge, attribute }, say) => ({
    message: `${say.thing(edge)}: Es ist keine Nahtzugabe angegeben; es kam keine dazu.`,
    remedy: `Schreiben Sie ${attribute} an die Kante, an ihr Teil oder an die ganze Zeichnung; 0, wenn sie keine hat.`,
  }),
  'metadata-not-json': ({ reason, character }, say) => ({
    message: `Der Block mit Nähten und Stoffen (metadata) ist beschädigt: ${reason === 'character-expected' ? `${say.written(character ?? '')} wurde erwartet` : json[reason]}.`,
    remedy: 'Berichtigen Sie ihn dort, oder entfernen Sie den Block.',
  }),
  'metadata-not-understood': ({ part, of, key, near, words }, say) => ({
    message: `${subject(of, key, say)} wurde nicht verstanden.`,
    remedy: words === undefined ? forms[part] : oneOf(near, words, say),
  }),
  'metadata-not-read': ({ key, keys, of }, say) => ({
    message: `${say.written(key)}${of === undefined ? '' : ` (${say.thing(of)})`} ist nicht bekannt und wurde nicht gelesen.`,
    remedy: instead(key, keys, 'Wörter', say),
  }),
  'run-direction-not-given': ({ seam, edge, ends }, say) => ({
    message: `${say.thing(seam)} sagt nicht, an welchem Ende sie beginnt (${say.thing(edge)}); genommen wurde das im Uhrzeigersinn erste.`,
    remedy: `Schreiben Sie „from ${shownName(ends[0])}“ oder „from ${shownName(ends[1])}“.`,
  }),
  'name-not-writable': ({ name }, say) => ({
    message: `Der Name ${say.written(name)} enthält ein Zeichen, das eine Zeichnung nicht aufnehmen kann.`,
    remedy: 'Lassen Sie Steuerzeichen weg.',
  }),
};

const nouns = {
  notch: 'Passzeichen',
  dart: 'Abnäher',
  pleat: 'Falte',
  edge: 'Kante',
  line: 'Linie',
  mark: 'Punkt',
  outline: 'Umriss',
} as const;
const a = {
  notch: 'ein Passzeichen',
  dart: 'ein Abnäher',
  pleat: 'eine Falte',
  edge: 'eine Kante',
  line: 'eine Linie',
  mark: 'ein Punkt',
  outline: 'ein Umriss',
} as const;

const called = (what: keyof typeof nouns, name: string | undefined, say: Say): string =>
  name === undefined ? a[what].replace(/^e/, 'E') : `${nouns[what]} ${say.written(name)}`;

const onPlaces: Readonly<Record<string, string>> = {
  root: 'die Zeichnung selbst (svg)',
  piece: 'ein Teil (data-piece)',
  notch: 'ein Passzeichen (data-notch)',
  dart: 'einen Abnäher (data-dart)',
  pleat: 'eine Falte (data-pleat)',
  edge: 'eine Kante (data-edge)',
  line: 'eine Linie (data-line)',
  mark: 'einen Punkt (data-mark)',
  outline: 'einen Umriss (data-outline)',
};

const json = {
  'character-expected': '',
  'value-expected': 'ein Wert wurde erwartet',
  'text-expected': 'ein Text in Anführungszeichen wurde erwartet',
  'key-twice': 'ein Name steht zweimal da',
  'nested-too-deep': 'er ist zu tief verschachtelt',
  'text-after-end': 'nach seinem Ende folgt noch etwas',
} as const;

const forms = {
  object: 'Schreiben Sie es in geschweiften Klammern, wie { "name": ... }.',
  run: 'Schreiben Sie es als "teil.kante from nachbar".',
  ease: 'Schreiben Sie es als "12 mm" oder "-3 %".',
  length: 'Schreiben Sie eine Länge wie "150 cm".',
  percentage: 'Schreiben Sie einen Prozentwert wie "35 %".',
  stretch: 'Schreiben Sie { "across": "35 %", "along": "20 %" }.',
  nap: 'Schreiben Sie true oder false.',
  count: 'Schreiben Sie eine ganze Zahl, etwa 7.',
  word: 'Schreiben Sie ein Wort in Anführungszeichen.',
  part: 'Schreiben Sie zwei Stellen, wie "60 mm to 220 mm".',
} as const;

function subject(of: Thing | undefined, key: string | undefined, say: Say): string {
  if (of === undefined)
    return key === undefined ? 'Der Block mit Nähten und Stoffen (metadata)' : say.written(key);
  return key === undefined ? say.thing(of) : `${say.written(key)} (${say.thing(of)})`;
}
