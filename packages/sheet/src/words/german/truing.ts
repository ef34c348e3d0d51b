import type { TruingTellings } from '@paperhinge/alter/sayings';
import type { Tellings } from '../catalogue.js';
import { typedLength } from '../step-text.js';

export const truing: Tellings<TruingTellings> = {
  'truing-left': ({ edge, what, alongMm, angleDeg, needMm }, say) => {
    const place = `${say.length(alongMm)} von ihrem Anfang`;
    const seen = {
      kink: `ein Knick von ${say.angle(angleDeg)}, ${place}`,
      step: `eine Stufe, ${place}`,
      corner: `eine Ecke von ${say.angle(angleDeg)}, ${place}`,
      fold: `${say.angle(angleDeg)} Abweichung vom rechten Winkel am Bruch`,
      across: `eine Ecke von ${say.angle(angleDeg)} an ihrem Ende, wo sie weiterläuft`,
    }[what];
    if (what === 'corner')
      return {
        message: `${say.thing(edge)}: ${seen}, blieb; eine so scharfe Ecke gilt als gewollt.`,
        remedy: 'Zeichnen Sie sie von Hand neu, wenn sie es nicht ist.',
      };
    return {
      message: `${say.thing(edge)}: ${seen}, blieb; eine glatte Linie läge weiter davon entfernt als erlaubt.`,
      remedy:
        needMm === undefined
          ? 'Zeichnen Sie dort von Hand neu.'
          : `Erlauben Sie mehr, within: ${typedLength(roomy(needMm), say.unit)}, wenn sie nicht gewollt ist.`,
    };
  },
  'straight-left': ({ edge, awayMm, withinMm }, say) => ({
    message: `${say.thing(edge)} blieb, wie sie war: Gerade gezeichnet, würde sie sich um ${say.length(awayMm)} bewegen; erlaubt sind ${say.length(withinMm)}.`,
    remedy: `Erlauben Sie mehr, within: ${typedLength(roomy(awayMm), say.unit)}, oder begradigen Sie ein kürzeres Stück.`,
  }),
  'straight-over-dart': ({ edge }, say) => ({
    message: `${say.thing(edge)} lässt sich nicht über einen Abnäher oder eine andere Kante hinweg gerade zeichnen.`,
    remedy: 'Nennen Sie zwei Stellen auf einer Seite davon, oder schließen Sie erst den Abnäher.',
  }),
  'straight-without-length': ({ edge }, say) => ({
    message: `${say.thing(edge)}: Die beiden Stellen sind eine.`,
    remedy: 'Nennen Sie zwei Stellen, die auseinander liegen.',
  }),
  'places-without-straight': ({ edge }, say) => ({
    message: `„from“ und „to“ sagen, wo die Kante gerade gezeichnet wird; das ist hier nicht verlangt: ${say.thing(edge)}.`,
    remedy: 'Fügen Sie straight: yes hinzu, oder lassen Sie die Stellen weg.',
  }),
  'truing-crosses': ({ edge }, say) => ({
    message: `${say.thing(edge)}, ausgestrichen, liefe quer über den Umriss ihres Teils.`,
    remedy: 'Erlauben Sie ihr weniger.',
  }),
};

/** mm. Rounded to an eighth of an inch the limit must still be enough. */
const roomy = (mm: number): number => mm * 1.05 + 1.6;
