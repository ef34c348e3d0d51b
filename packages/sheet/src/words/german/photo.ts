import type { PhotoTellings, PlaceInPicture } from '@paperhinge/geometry/sayings';
import type { Tellings } from '../catalogue.js';

export const photo: Tellings<PhotoTellings> = {
  'no-target-found': ({ picture }) => ({
    message: `Auf Bild ${picture} ist kein Messblatt zu sehen.`,
    remedy:
      'Drucken Sie die Messblätter (paperhinge print --photo-frame -o frame.pdf), legen Sie sie um die Teile und fotografieren Sie noch einmal von oben.',
  }),
  'too-few-targets': ({ picture, sheets }) => ({
    message: `Auf Bild ${picture} ${sheets === 1 ? 'ist nur 1 Messblatt' : `sind nur ${sheets} Messblätter`} lesbar.`,
    remedy: 'Legen Sie mindestens vier Messblätter um und zwischen die Teile, ohne sie zu verdecken.',
  }),
  'picture-blurred': ({ picture }) => ({
    message: `Bild ${picture} ist unscharf: die Messblätter darauf sind nicht lesbar.`,
    remedy:
      'Fotografieren Sie bei besserem Licht; halten Sie die Kamera ruhig und lassen Sie sie scharfstellen.',
  }),
  'picture-too-small': ({ picture, width, height }) => ({
    message: `Bild ${picture} ist zu klein zum Messen: ${width} × ${height} Punkte.`,
    remedy: 'Geben Sie das Bild an, wie die Kamera es aufnahm, keine verkleinerte Kopie.',
  }),
  'pictures-share-no-sheets': ({ picture }) => ({
    message: `Bild ${picture} hat mit den anderen Bildern kein Messblatt gemeinsam.`,
    remedy:
      'Auf je zwei Bildern sollen mindestens zwei gleiche Messblätter liegen; verschieben Sie dazwischen keines.',
  }),
  'ground-not-seen': () => ({
    message: 'Der Boden ist von dem, was darauf liegt, nicht zu unterscheiden.',
    remedy:
      'Legen Sie die Teile auf einen einfarbigen Grund anderer Farbe, der um jedes Messblatt zu sehen ist.',
  }),
  'scan-ground-not-seen': () => ({
    message: 'Was auf dem Scanner liegt, ist vom Grund dahinter nicht zu unterscheiden.',
    remedy:
      'Legen Sie ein einfarbiges Blatt anderer Farbe hinter die Teile, größer als sie, und scannen Sie noch einmal.',
  }),
  'no-piece-found': ({ faint, cutOff }) =>
    cutOff > 0
      ? {
          message:
            'Die Messblätter wurden gefunden; was daneben liegt, läuft aus dem Bild hinaus, und nichts wurde abgenommen.',
          remedy: 'Fotografieren Sie noch einmal mit allen Teilen ganz im Bild.',
        }
      : {
          message:
            faint === 0
              ? 'Die Messblätter wurden gefunden, aber kein Schnittteil daneben.'
              : 'Die Messblätter wurden gefunden; was daneben liegt, hebt sich kaum vom Grund ab, und kein Teil wurde abgenommen.',
          remedy:
            'Legen Sie ein Blatt anderer Farbe unter die Teile, frei von den Messblättern, und fotografieren Sie noch einmal.',
        },
  'no-piece-on-scan': ({ faint, cutOff }) =>
    cutOff > 0
      ? {
          message: 'Was auf dem Scan liegt, ist am Rand abgeschnitten; kein Teil wurde abgenommen.',
          remedy: 'Scannen Sie ganze Teile, oder fotografieren Sie sie mit den Messblättern.',
        }
      : {
          message:
            faint === 0
              ? 'Auf dem Scan wurde kein Schnittteil gefunden.'
              : 'Was auf dem Scan liegt, hebt sich kaum vom Grund ab; kein Teil wurde abgenommen.',
          remedy:
            'Legen Sie ein Blatt anderer Farbe hinter die Teile; für gezeichnete Linien geben Sie die Ecken an.',
        },
  'too-few-clicks': ({ clicks }) => ({
    message: `${clicks === 1 ? '1 Ecke umschließt' : `${clicks} Ecken umschließen`} kein Teil.`,
    remedy: 'Geben Sie die Ecken des Teils der Reihe nach an, mindestens drei.',
  }),
  'click-outside': ({ click }) => ({
    message: `Ecke ${click} liegt außerhalb dessen, was das Bild vom Boden zeigt.`,
    remedy: 'Geben Sie die Ecken in Punkten des ersten Bildes an: nach rechts, dann nach unten.',
  }),
  'no-line-between': ({ from, to }) => ({
    message: `Keine Linie führt von Ecke ${from} zu Ecke ${to}.`,
    remedy:
      'Geben Sie die Ecken an, an denen sich die Linien treffen, auf 4 mm genau, und wo eine Linie schlecht zu sehen ist, eine weitere dazwischen.',
  }),
  'size-not-drawn-there': ({ size, corner }, say) => ({
    message: `Bei Ecke ${corner} führt keine Linie der Größe ${say.written(size)} weiter.`,
    remedy: `Sehen Sie nach, wie Größe ${say.written(size)} dort gezeichnet ist, und nennen Sie ihren Stift; oder lassen Sie sie aus --sizes weg und zeichnen Sie sie für sich nach, mit --pen und eigenen Ecken.`,
  }),
  'scan-scale-out-of-range': ({ dotsToMm }, say) => ({
    message: `Kein Scan hat ${say.number(dotsToMm, 2)} Punkte je Millimeter.`,
    remedy: 'Geben Sie die Auflösung an, auf die der Scanner gestellt war, etwa 300 dpi.',
  }),
  'scan-cuts-off': ({ pieces }) => ({
    message: `${pieces === 1 ? 'Am Rand des Scans ist etwas' : `Am Rand des Scans sind ${pieces} Dinge`} abgeschnitten und weggelassen.`,
    remedy: 'Scannen Sie ganze Teile, oder fotografieren Sie sie mit den Messblättern.',
  }),
  'scan-scale': ({ dotsToMm }, say) => ({
    message: `Der Scan wurde überall mit ${say.number(dotsToMm, 2)} Punkten je Millimeter gemessen; nichts darin sagt, wie genau das ist.`,
    remedy: 'Messen Sie zur Sicherheit eine lange Kante nach.',
  }),
  'trace-truth': ({ residualMm, worstMm, sheet }, say) => ({
    message: `Die Marken stimmen auf ${fine(residualMm, say.number)} überein; die schlechteste, auf Blatt ${sheet}, liegt ${fine(worstMm, say.number)} daneben.`,
    remedy: 'Messen Sie zur Sicherheit eine lange Kante nach.',
  }),
  'few-sheets': ({ sheets }) => ({
    message: `${sheets} Messblätter wurden gelesen; die Enden der Teile können ungenauer sein.`,
    remedy: 'Legen Sie vier bis neun Messblätter, einige jenseits aller Enden der Teile.',
  }),
  'sheet-not-flat': ({ sheet, offMm }, say) => ({
    message: `Blatt ${sheet} liegt nicht flach oder wurde verschoben: Teile davon liegen bis zu ${fine(offMm, say.number)} daneben. Sie wurden weggelassen.`,
    remedy: 'Streichen Sie das Blatt glatt, oder kleben Sie es fest, und fotografieren Sie noch einmal.',
  }),
  'sheet-laid-twice': ({ sheet }) => ({
    message: `Blatt ${sheet} liegt mehrmals da. Jedes wurde für sich gemessen.`,
    remedy: 'Bei einem Bild ist nichts zu tun; bei mehreren legen Sie jedes Blatt einmal.',
  }),
  'picture-aslant': ({ picture, tiltDeg }, say) => ({
    message: `Bild ${picture} wurde um ${say.angle(tiltDeg)} schräg aufgenommen.`,
    remedy: 'Fotografieren Sie von weiter oben, möglichst senkrecht.',
  }),
  'picture-coarse': ({ picture, dotMm }, say) => ({
    message: `Ein Punkt von Bild ${picture} ist ${fine(dotMm, say.number)} Boden.`,
    remedy: 'Gehen Sie näher heran, oder machen Sie mehrere Bilder mit gemeinsamen Messblättern.',
  }),
  'piece-cut-off': ({ at }) => ({
    message: `Am ${sides[at]} Bildrand ist etwas abgeschnitten. Es wurde weggelassen.`,
    remedy: 'Ist es ein Schnittteil, fotografieren Sie noch einmal mit dem ganzen Teil im Bild.',
  }),
  'piece-beyond-sheets': ({ piece, beyondMm }, say) => ({
    message: `${say.written(piece)} reicht ${say.length(beyondMm)} über die Messblätter hinaus, wo das Bild ungenauer gemessen ist.`,
    remedy: 'Legen Sie ein Messblatt jenseits dieses Endes.',
  }),
  'pieces-counted': ({ pieces }) => ({
    message: `${pieces === 1 ? '1 Teil wurde' : `${pieces} Teile wurden`} gefunden.`,
    remedy:
      'Liegen mehr da, legen Sie unter die fehlenden ein Blatt anderer Farbe und fotografieren Sie noch einmal.',
  }),
  'piece-faint': ({ piece }, say) => ({
    message: `${say.written(piece)} hebt sich kaum vom Grund ab; der Umriss kann mehr als einen halben Millimeter danebenliegen, seine Ecken weiter.`,
    remedy:
      'Legen Sie ein Blatt anderer Farbe darunter, viel heller oder dunkler, und fotografieren Sie noch einmal.',
  }),
  'edge-faint': place => ({
    message: `${spot(place)} hebt sich etwas kaum vom Grund ab. Es wurde weggelassen.`,
    remedy:
      'Ist es ein Schnittteil, legen Sie ein Blatt anderer Farbe darunter und fotografieren Sie noch einmal.',
  }),
  'floor-too-bright': ({ sharePercent }, say) => ({
    message: `${say.number(sharePercent, 0)} % des Bildes sind so hell, dass sich dort nichts mehr unterscheiden lässt.`,
    remedy:
      'Fotografieren Sie noch einmal ohne Blitz und nicht in der Sonne, mit dunkler eingestellter Kamera.',
  }),
  'piece-touches-sheet': ({ piece }, say) => ({
    message: `${say.written(piece)} liegt auf einem Messblatt; der Umriss ist dort weniger sicher.`,
    remedy: 'Legen Sie die Messblätter frei von den Teilen.',
  }),
};

const rows = { top: 'Oben', middle: '', bottom: 'Unten' } as const;
const columns = { left: 'links', middle: '', right: 'rechts' } as const;
const spot = ({ down, across }: PlaceInPicture): string => {
  const words = `${rows[down]} ${columns[across]} im Bild`.trim();
  return words === 'im Bild' ? 'In der Bildmitte' : `${words[0]!.toUpperCase()}${words.slice(1)}`;
};
const sides = { top: 'oberen', right: 'rechten', bottom: 'unteren', left: 'linken' } as const;
const fine = (mm: number, number: (value: number, decimals: number) => string): string =>
  `${number(mm, 2)} mm`;
