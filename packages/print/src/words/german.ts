import type { Cutting } from '@paperhinge/geometry';
import { sizesBetween } from '@paperhinge/geometry/internal';
import type { PageWords } from './page-words.js';

/** Cloths by their usual short names; a maker's own name stays as it is. */
const cloths: Readonly<Record<string, string>> = {
  main: 'Oberstoff',
  contrast: 'Kontraststoff',
  lining: 'Futter',
  interfacing: 'Einlage',
  stabiliser: 'Stabilisierung',
};
const cloth = (name: string): string => cloths[name] ?? name;
const sorted = (noun: string) => (sort: string) => (sort ? `${noun} (${sort})` : noun);

const turned = ({ count, mirrored }: Cutting, ofThem = ''): string =>
  mirrored && count >= 2 ? `, ${Math.floor(count / 2)} ${ofThem}gegengleich` : '';
const inLayers = ({ layers = 1 }: Cutting): string => (layers > 1 ? `, in ${layers} Lagen` : '');

/** German, complete. */
export const german: PageWords = {
  language: 'de',
  decimalSign: ',',
  layers: {
    'Cutting lines': 'Schnittlinien',
    'Stitching lines and darts': 'Nahtlinien und Abnäher',
    'Grain, levels and marks': 'Fadenlauf, Höhenlinien und Zeichen',
    'Names and notes': 'Namen und Hinweise',
    'Before the alteration': 'Vor der Änderung',
    'Joining the pages': 'Zusammenkleben',
    Cover: 'Deckblatt',
    'Fine grid': 'Feines Raster',
    Tint: 'Tönung',
    'Calibration grid': 'Einstellraster',
  },
  paper: { us: name => `US ${name}`, roll: inches => `Rolle ${inches} in` },
  piece: {
    cut: (cutting, fold) =>
      fold
        ? `${cutting.count} × im Stoffbruch zuschneiden${inLayers(cutting)}`
        : `${cutting.count} × zuschneiden${turned(cutting, 'davon ')}${inLayers(cutting)}`,
    count: (cutting, fold) => `${cutting.count}${fold ? ' im Bruch' : turned(cutting)}${inLayers(cutting)}`,
    cutOf: (cutting, fold) =>
      `${cutting.count} × ${cloth(cutting.fabric) || 'zuschneiden'}${fold ? ' im Bruch' : turned(cutting, 'davon ')}${inLayers(cutting)}`,
    cloth,
    rightSideUp: 'nur mit der rechten Seite nach oben',
    size: name => {
      const pair = sizesBetween(name);
      return pair ? `zwischen Größe ${pair[0]} und ${pair[1]}` : `Größe ${name}`;
    },
    placeOnFold: 'Stoffbruch',
    hem: width => `Saum ${width}`,
    finish: {
      'turned once': 'einfach umgelegt',
      'turned twice': 'doppelt umgelegt',
      rolled: 'gerollt',
      faced: 'mit Beleg',
      bound: 'eingefasst',
      banded: 'mit Blende',
    },
    topstitched: distance => `${distance} breit absteppen`,
    interfaced: width => `${width} Einlage`,
    takenUp: {
      eased: to => `auf ${to} einhalten`,
      gathered: to => `auf ${to} kräuseln`,
      stretched: to => `auf ${to} dehnen`,
      pleated: to => `auf ${to} in Falten legen`,
    },
    pleat: { knife: 'Falte', box: 'Quetschfalte', inverted: 'Kellerfalte', tuck: 'Biese' },
    stitchedDown: length => `${length} tief zusteppen`,
    greatestStretch: 'größte Dehnung',
    stretchesMost: { across: 'größte Dehnung quer zum Fadenlauf', along: 'größte Dehnung im Fadenlauf' },
    fastening: {
      zip: sorted('Reißverschluss'),
      buttons: sorted('Knöpfe'),
      hooks: sorted('Haken'),
      snaps: sorted('Druckknöpfe'),
      elastic: sorted('Gummiband'),
      drawcord: sorted('Kordel'),
    },
    opening: length => `Schlitz ${length}`,
    line: {
      grain: 'Fadenlauf',
      level: 'Höhenlinie',
      'lengthen-shorten': 'hier verlängern oder kürzen',
      fold: 'Faltlinie',
      placement: 'Ansatzlinie',
      style: 'Formlinie',
      dart: 'Abnäher',
    },
    lengthenHere: 'hier verlängern oder kürzen',
    lengthenShort: 'verlängern, kürzen',
    lengthenTo: (distance, to) =>
      `hier verlängern oder kürzen · ${distance} ${to === 'hem' ? 'bis zum Saum' : 'bis zur Unterkante'}`,
    lengthenBy: distance => `hier verlängern oder kürzen · ${distance}`,
  },
  page: {
    numbered: (page, of) => `Seite ${page} von ${of}`,
    atFullSize: 'mit 100 % drucken, nicht an die Seite anpassen',
    corrected: (across, down) =>
      `mit 100 % drucken: für diesen Drucker schon berichtigt (${across} quer, ${down} längs)`,
    printOn: (paper, scale) => `${paper}, ${scale}`,
    subject: pieces => `Schnittmuster in wahrer Größe: ${pieces}`,
    glueHere: page => [`hier ${page} aufkleben, Kante an die Linie`, `hier ${page} aufkleben`, page],
    layOver: page => `an dieser Kante abschneiden, über ${page} legen`,
    blank: 'jedes leere Blatt genügt',
    blankOnMap: 'leeres Blatt',
    sheet: (number, name) => [`Bogen ${number}`, cloth(name)].filter(Boolean).join(': '),
  },
  cover: {
    map: 'Seitenplan',
    checkScale: 'Zuerst die Größe prüfen',
    thisSquare: size => `dieses Quadrat misst ${size}`,
    twoInches: '2 Zoll',
    oneSheet: 'ein Bogen',
    pages: (all, tiles, least, blank) =>
      `${all} Seiten: ${tiles} zum Zusammenkleben${blank > 0 ? `, ${blank} davon leer` : ''} (die Fläche der Teile allein füllte ${least})`,
    printFirst: several =>
      several
        ? 'Zuerst nur Seite 1, diese hier, mit 100 % („Originalgröße“) drucken, ohne Anpassen an die Seite.'
        : 'Mit 100 % („Originalgröße“) drucken lassen, ohne Anpassen an die Seite.',
    measureSquare: several =>
      several
        ? 'Beide Seiten eines Quadrats messen. Erst wenn sie stimmen, den Rest drucken; sonst passt kein Teil.'
        : 'Vor dem Zuschneiden beide Seiten eines Quadrats messen. Stimmen sie nicht, passt kein Teil.',
    corrected: (across, down) =>
      `Die Seiten sind für diesen Drucker schon berichtigt: ${across} quer, ${down} längs. Mit 100 % drucken; die Quadrate müssen nun stimmen.`,
    notQuite:
      'Ein wenig daneben, und der Drucker hat keine Einstellung dafür? Noch einmal drucken und angeben, was das Quadrat quer und längs misst; dann stimmen die Seiten.',
    joinOverlapping:
      'Jede Seite an der linken und oberen Kante abschneiden und bis zur gepunkteten Linie über den Streifen der Nachbarseite legen; die Rauten schließen sich und tragen einen Namen.',
    joinEdgeToEdge:
      'Jede Seite an der Kante abschneiden und Kante an Kante legen; die Rauten schließen sich und tragen einen Namen.',
    blanks:
      'Eine Seite mit „leeres Blatt“ trägt keine Linie: jedes leere Blatt dieser Größe kann ihren Platz einnehmen.',
    onePiece: 'Nur ein Teil? Die Seiten drucken, die in der Zuschneideliste daneben stehen.',
  },
  report: {
    pattern: 'Schnittmuster',
    alteredFrom: name => `geändert aus ${name}`,
    sheetName: name => `Änderungsblatt ${name}`,
    wearer: name => `für ${name}`,
    sections: {
      pieces: 'Teile',
      cutting: 'Zuschneideliste',
      cloth: 'Stoff zu kaufen',
      bands: 'Bänder und Streifen',
      order: 'Arbeitsfolge',
      findings: 'Prüfungen',
      cautions: 'Vorsicht',
      steps: 'Was geändert wurde',
      girths: 'Umfänge',
      edges: 'Kanten vorher und nachher',
      names: 'Wie jede Kante heißt und wo sie beginnt',
      seams: 'Nähte',
    },
    columns: {
      piece: 'Teil',
      cut: 'Zuschnitt',
      cloth: 'Stoff',
      pages: 'Seiten',
      allowances: 'Zugaben',
      figure: 'Maß',
      measure: 'Zuschneiden',
      level: 'Höhe',
      body: 'Körper',
      before: 'Vorher',
      after: 'Nachher',
      ease: 'Zugabe',
      edge: 'Kante',
      change: 'Änderung',
      allowance: 'Nahtzugabe',
      seam: 'Naht',
      oneSide: 'Eine Seite',
      otherSide: 'Andere Seite',
      difference: 'Unterschied',
      easeWanted: 'Gewünschte Weite',
      result: 'Ergebnis',
      width: 'Breite',
      laid: 'Gelegt',
      takes: 'Teile brauchen',
      buy: 'Kaufen',
    },
    bandFigures: { length: 'Länge', width: 'Breite', quarterMark: 'Viertelmarke' },
    cloth: {
      nap: of => `${of} hat Strich: alle Teile in einer Richtung auflegen, oben immer am selben Ende.`,
      repeat: (of, repeat, pieces, more) =>
        `${of} hat einen Rapport von ${repeat}: an den Knipsen der Nähte passend auflegen. Üblich ist ein Rapport mehr für jedes Teil, das passen muss, ${
          pieces === 1
            ? `${more} für das eine Teil`
            : `${more}, wenn ${pieces === 2 ? 'beide' : `alle ${pieces}`} passen müssen`
        }.`,
      laid: {
        folded: 'längs gefaltet, doppelt',
        open: 'offen, einfach; Teile im Bruch ganz, Paare einzeln gegengleich',
        either: 'längs gefaltet oder offen, beides gleich',
      },
      reckoned: (selvedge, spare, step) =>
        `Fadenlauf längs zum Stoff; an jeder Webkante bleiben ${selvedge} frei. Zu kaufen sind ${spare} mehr, als die Teile brauchen (mit einem Rapport je Teil, wo der Stoff einen hat), aufgerundet auf die nächsten ${step}. Stoff, der einläuft: vor dem Zuschneiden waschen und um so viel mehr kaufen, wie er einläuft.`,
    },
    allSound: 'Jede Naht wurde abgegangen, jede Prüfung bestanden.',
    severity: { fault: 'Lässt sich nicht nähen', warning: 'Achtung', note: 'Hinweis' },
    step: number => `Schritt ${number}`,
    gone: 'entfallen',
    made: 'neu',
    sews: 'passt',
    doesNotMatch: 'passt nicht',
    faults: count =>
      count === 1
        ? 'Eines lässt sich so noch nicht nähen oder passt nicht: siehe Prüfungen.'
        : `${count} Dinge lassen sich so noch nicht nähen oder passen nicht: siehe Prüfungen.`,
    seamsMatch: (matching, all) => `${matching} von ${all} Nähten passen`,
    warnings: count => (count === 1 ? 'ein Hinweis zum Ansehen' : `${count} Hinweise zum Ansehen`),
    before: 'Vorher',
    after: 'Nachher',
    beforeAndAfter: 'Vorher und nachher',
    namesKey:
      'Jede Kante mit dem Namen, den ein Blatt verwendet; der Pfeil steht an ihrem Anfang, von dem aus Anteile und Längen gezählt werden.',
    key: 'Alles in einem Maßstab. Durchgezogen: Schnittlinie; gestrichelt: Nahtlinie; gepunktet: die Nahtlinie vorher.',
    contents: 'Inhalt',
    foot: 'Vor dem Zuschneiden ein gedrucktes Quadrat messen.',
  },
  projector: {
    title: name => `${name} (Projektor)`,
    subject: 'Schnittmuster in wahrer Größe auf einer Seite, zum Projizieren oder Zuschneiden',
    setUp: (square, diagonal, step) =>
      `Den Projektor so einstellen, dass dieses Quadrat an jeder Seite ${square} und in beiden Diagonalen ${diagonal} misst. Dann sind die Quadrate des Rasters ${step} groß: in allen Ecken ein Lineal anlegen. Die Seite in Originalgröße zeigen; auf der Mitte der kräftigen Linie schneiden.`,
    thisSheet: size => `Dieser Bogen: ${size}`,
  },
  photoFrame: {
    title: (sheets, paper) => `Messblätter, ${sheets} Blatt ${paper}`,
    subject: 'Blätter, die um fotografierte Schnittteile gelegt werden',
    sheet: (number, of) => `Messblatt ${number} von ${of}`,
    lines: most => [
      'In Originalgröße drucken. Jede Seite dieses Quadrats ist 50 mm lang; misst sie anders, geben Sie beim Abnehmen an, wie viel.',
      `Mindestens vier Blätter (bis zu ${most}) flach um die Teile und zwischen sie legen, ohne sie zu berühren, jedes nur einmal.`,
    ],
  },
};
