import { nearestName } from '@paperhinge/geometry/sayings';
import type { SheetTellings } from '../../tellings.js';
import type { Tellings } from '../catalogue.js';
import { far, spokenOf } from './field-name.js';
import { instead, oneOf } from './instead.js';

type Figures =
  | 'length-not-understood'
  | 'length-out-of-range'
  | 'percent-not-understood'
  | 'percent-out-of-range';
type MoreFigures =
  | 'angle-not-understood'
  | 'angle-out-of-range'
  | 'count-not-understood'
  | 'count-out-of-range';

const figures: Pick<Tellings<SheetTellings>, Figures | MoreFigures | 'scale-not-understood'> = {
  'length-not-understood': ({ write, ...of }, say) => ({
    message: `${spokenOf(of, say)} ist keine Länge.`,
    remedy:
      write === undefined
        ? 'Schreiben Sie eine Länge als 12, 12 mm, 1.2 cm, 3/8 in oder 2 7/8".'
        : `Schreiben Sie ${write}, mit Punkt.`,
  }),
  'length-out-of-range': ({ givenMm, leastMm = 0, mostMm = 0, over = false, opposite, ...of }, say) => {
    const who = spokenOf(of, say);
    if (givenMm === undefined)
      return { message: `${who} ist größer als jedes Kleidungsstück.`, remedy: 'Prüfen Sie die Einheit.' };
    if (givenMm > mostMm)
      return {
        message: `${who} ist mehr als ${far(mostMm, say)}.`,
        remedy: `Geben Sie höchstens ${say.atMost(mostMm)} an; prüfen Sie die Einheit.`,
      };
    if (givenMm === 0 && over)
      return { message: `${who} ist null.`, remedy: 'Geben Sie eine Länge über 0 an.' };
    const how = givenMm < 0 ? 'ist negativ' : `ist weniger als ${far(leastMm, say)}`;
    const least = over ? 'Geben Sie eine Länge über 0 an' : 'Geben Sie 0 oder mehr an';
    return {
      message: `${who} ${how}.`,
      remedy:
        leastMm !== 0
          ? `Geben Sie ${say.atLeast(leastMm)} bis ${say.atMost(mostMm)} an.`
          : opposite === undefined
            ? `${least}.`
            : `${least}, oder nehmen Sie ${say.written(opposite)}.`,
    };
  },
  'percent-not-understood': ({ write, lacksSign, ...of }, say) => ({
    message: `${spokenOf(of, say)} ist kein Prozentwert mit Zeichen.`,
    remedy:
      lacksSign && write !== undefined
        ? `Schreiben Sie ${write}, wenn Sie das meinen.`
        : 'Schreiben Sie einen Prozentwert mit Zeichen, etwa 80 %.',
  }),
  'percent-out-of-range': ({ givenPercent, leastPercent, mostPercent, over, ...of }, say) => {
    const [least, most] = [say.percent(leastPercent), say.percent(mostPercent)];
    const how =
      givenPercent > mostPercent
        ? `ist mehr als ${most}`
        : givenPercent < 0 && leastPercent >= 0
          ? 'ist negativ'
          : over && givenPercent === leastPercent
            ? `ist ${least}`
            : `ist weniger als ${least}`;
    return {
      message: `${spokenOf(of, say)} ${how}.`,
      remedy: over
        ? `Geben Sie mehr als ${least} an, höchstens ${most}.`
        : `Geben Sie ${least} bis ${most} an.`,
    };
  },
  'angle-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} ist kein Winkel.`,
    remedy: 'Schreiben Sie Grad, etwa 12, 12° oder 12 deg.',
  }),
  'angle-out-of-range': (of, say) => ({
    message: `${spokenOf(of, say)} ist eine halbe Drehung oder mehr.`,
    remedy: 'Geben Sie weniger als 180 Grad an.',
  }),
  'count-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} ist keine ganze Zahl.`,
    remedy: 'Schreiben Sie eine ganze Zahl.',
  }),
  'count-out-of-range': ({ least, most, ...of }, say) => ({
    message: `${spokenOf(of, say)} ist außerhalb des Bereichs.`,
    remedy: `Geben Sie ${least} bis ${most} an.`,
  }),
  'scale-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} ist kein Maßstab.`,
    remedy:
      'Schreiben Sie 1/4 für eine Zeichnung auf ein Viertel, oder was eine ihrer Einheiten ist, etwa 1 mm.',
  }),
};

type Words =
  | 'position-not-understood'
  | 'position-off-edge'
  | 'edge-not-understood'
  | 'choice-not-understood';
type Names =
  | 'name-not-understood'
  | 'one-name-expected'
  | 'name-not-printable'
  | 'point-not-understood'
  | 'pair-expected';

const wordsAndPlaces: Pick<Tellings<SheetTellings>, Words | Names> = {
  'position-not-understood': ({ form, name, ...of }, say) => ({
    message: `${spokenOf(of, say)} ist keine Stelle auf einer Kante.`,
    remedy: {
      'from-nothing': 'Nennen Sie nach „from“ die Kante.',
      'share-or-length': 'Schreiben Sie 50 % oder 1/2 für einen Anteil, 0.5 mm für eine Länge.',
      any:
        name === undefined
          ? 'Schreiben Sie 1/3, 40 %, 1/3 from KANTE oder 60 mm from KANTE.'
          : `Schreiben Sie 0 mm from ${name} für das Ende an dieser Kante, 60 mm from ${name}, 1/3 oder 40 %.`,
    }[form],
  }),
  'position-off-edge': (of, say) => ({
    message: `${spokenOf(of, say)} liegt jenseits der Kante.`,
    remedy: 'Geben Sie einen Anteil von 0 bis 100 % oder eine Länge innerhalb der Kante an.',
  }),
  'edge-not-understood': ({ withLength, ...of }, say) => ({
    message: `${spokenOf(of, say)} ist keine Kante eines Teils.`,
    remedy: withLength
      ? 'Schreiben Sie TEIL.KANTE und eine Länge, etwa back.centre-back: 120 mm.'
      : 'Schreiben Sie TEIL.KANTE, etwa front.neck.',
  }),
  'choice-not-understood': ({ given, words, ...of }, say) => ({
    message: `${spokenOf(of, say)} steht nicht zur Wahl.`,
    remedy: oneOf(nearestName(given, words), words, say),
  }),
  'point-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} sagt nicht, wo ein Punkt liegt.`,
    remedy:
      'Schreiben Sie, wie weit nach rechts und nach unten: [12 cm, 4 cm]; oder seine Abstände: { from: { A: 12 cm, B: 9 cm } }; oder { mirror: A, over: [B, C] }.',
  }),
  'pair-expected': (of, say) => ({
    message: `${spokenOf(of, say)} ist keine Liste aus zweien.`,
    remedy: 'Schreiben Sie zwei in Klammern, etwa [10, 25].',
  }),
  'name-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} ist kein Name.`,
    remedy: 'Schreiben Sie einen Namen; einer aus Ziffern braucht Anführungszeichen.',
  }),
  'one-name-expected': ({ given, instead: verb, ...of }, say) => ({
    message: `${spokenOf(of, say)} nimmt einen Namen, nicht mehrere.`,
    remedy:
      verb === undefined
        ? 'Schreiben Sie einen davon.'
        : `Schreiben Sie einen davon, oder stattdessen ${verb} mit among: [${given.map(edge => `{ edge: ${edge} }`).join(', ')}].`,
  }),
  'name-not-printable': ({ among, ...of }, say) => ({
    message: `${among === undefined ? spokenOf(of, say) : `Ein Name in ${say.written(among)}`} ist kein druckbarer Name von höchstens 100 Zeichen.`,
    remedy: 'Schreiben Sie Buchstaben, Ziffern, Leerzeichen und Zeichen in einer Zeile.',
  }),
};

type Shapes = 'list-empty' | 'list-expected' | 'mapping-expected' | 'too-many-steps';
type Fields = 'missing-field' | 'unknown-field' | 'fields-conflict' | 'space-after-colon' | 'decimal-comma';
type Pages = 'paper-not-understood' | 'margins-not-understood' | 'square-not-understood';

const shapes: Pick<Tellings<SheetTellings>, Shapes | Fields | Pages> = {
  'list-empty': (of, say) => ({
    message: `${spokenOf(of, say)} nennt nichts.`,
    remedy: 'Nennen Sie wenigstens eines.',
  }),
  'list-expected': (of, say) => ({
    message: `${spokenOf(of, say)} ist keine Liste.`,
    remedy: 'Schreiben Sie jeden Eintrag nach „- “ in eine eigene Zeile.',
  }),
  'mapping-expected': ({ write, ...of }, say) => ({
    message: `${spokenOf(of, say)} hat keine Felder.`,
    remedy:
      write === undefined || of.field === undefined
        ? 'Schreiben Sie die Felder als „Name: Wert“.'
        : `Schreiben Sie ${of.field}: ${write}.`,
  }),
  'too-many-steps': ({ most, ...of }, say) => ({
    message: `${spokenOf(of, say)} hat mehr als ${most} Schritte.`,
    remedy: 'Verteilen Sie die Arbeit auf mehrere Blätter.',
  }),
  'missing-field': ({ fields, ...of }, say) => ({
    message: `In ${inField(spokenOf(of, say))} fehlt ${fields.map(say.written).join(' oder ')}.`,
    remedy:
      fields.length > 1
        ? 'Fügen Sie eines davon hinzu.'
        : `Fügen Sie ${fields.map(say.written).join()} hinzu.`,
  }),
  'unknown-field': ({ name, names, ...of }, say) => ({
    message: `${spokenOf(of, say)} hat kein Feld ${say.written(name)}.`,
    remedy: instead(name, names, 'Felder', say),
  }),
  'fields-conflict': ({ fields, ...of }, say) => ({
    message: `${spokenOf(of, say)} hat zugleich ${say.list(fields.map(say.written))}.`,
    remedy: 'Behalten Sie eines davon.',
  }),
  'space-after-colon': ({ write }) => ({
    message: 'Nach dem Doppelpunkt fehlt ein Leerzeichen.',
    remedy:
      write.length > 40
        ? 'Schreiben Sie nach jedem Doppelpunkt ein Leerzeichen.'
        : `Schreiben Sie „${write}“.`,
  }),
  'decimal-comma': ({ write }) => ({
    message: 'In einer Zahl steht ein Komma.',
    remedy: `Schreiben Sie ${write}, mit Punkt.`,
  }),
  'paper-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} ist kein Papierformat.`,
    remedy: 'Schreiben Sie a4, letter … oder ein Maß wie 600 x 900 mm.',
  }),
  'margins-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} ist weder eine Länge noch vier.`,
    remedy: 'Schreiben Sie eine Länge, oder vier: [oben, rechts, unten, links].',
  }),
  'square-not-understood': (of, say) => ({
    message: `${spokenOf(of, say)} ist nicht, was ein Quadrat in beiden Richtungen misst.`,
    remedy:
      'Schreiben Sie zwei Längen, quer und längs: [49.5, 50.2] in einem Blatt, 49.5,50.2 nach --measured.',
  }),
};

const inField = (spoken: string): string => (spoken === 'Das Blatt' ? 'diesem Blatt' : spoken);

export const sheetFields: typeof figures & typeof wordsAndPlaces & typeof shapes = {
  ...figures,
  ...wordsAndPlaces,
  ...shapes,
};
