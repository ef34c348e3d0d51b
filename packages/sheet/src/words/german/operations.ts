import type { OperationTellings } from '@paperhinge/alter/sayings';
import type { Tellings } from '../catalogue.js';
import { stepText, typedLength } from '../step-text.js';

export const operations: Tellings<OperationTellings> = {
  'dart-legs-unlike': ({ dart, firstMm, secondMm }, say) => ({
    message: `${say.thing(dart)}: Die Schenkel sind ${say.length(firstMm)} und ${say.length(secondMm)} lang; genäht träfen sich ihre Enden nicht.`,
    remedy: 'Zeichnen Sie den Abnäher mit gleich langen Schenkeln, auf 1 mm (1/32 in) genau.',
  }),
  'point-back-too-long': ({ dart, deepMm, backMm }, say) => ({
    message: `${say.thing(dart)} ist an der neuen Stelle ${say.length(deepMm)} tief; die Spitze lässt sich nicht um ${say.length(backMm)} zurücksetzen.`,
    remedy: 'Setzen Sie die Spitze um weniger als diese Tiefe zurück.',
  }),
  'pressing-by-default': ({ dart }, say) => ({
    message: `${say.thing(dart)} sollte an der alten Stelle auf eigene Art gebügelt werden; an der neuen gilt die übliche Regel.`,
    remedy: 'Sagen Sie neu, wohin er gebügelt wird, wenn die Regel nicht passt.',
  }),
  'range-needed': ({ edge, slashes }, say) => ({
    message: `${slashes} Schnitte können sich nicht alle an einer Stelle öffnen: ${say.thing(edge)}.`,
    remedy: 'Geben Sie zwei Stellen an, zwischen denen sie liegen, etwa [1/4, 3/4], oder gar keine.',
  }),
  'spread-too-wide': ({ slashMm, byMm }, say) => ({
    message: `Ein ${say.length(slashMm)} langer Schnitt kann sich nicht um ${say.length(byMm)} öffnen.`,
    remedy: 'Spreizen Sie um weniger, oder machen Sie mehr Schnitte.',
  }),
  'spread-needs-length': () => ({
    message: 'Ohne Gelenk dreht sich nichts, also lässt sich das Teil nicht um einen Winkel spreizen.',
    remedy: 'Geben Sie „by“ als Länge an, oder nennen Sie das Ende mit dem Gelenk.',
  }),
  'fold-needs-opening': () => ({
    message: 'Wo der Schnitt übereinandergeschoben wird, gibt es nichts zu falten.',
    remedy: 'Spreizen Sie um mehr als 0, oder lassen Sie „into“ weg.',
  }),
  'pleat-name-taken': ({ piece, name }, say) => ({
    message: `${say.thing(piece)} hat schon eine Kante, einen Abnäher oder eine Falte ${say.written(name)}.`,
    remedy: 'Geben Sie den Falten einen anderen Namen.',
  }),
  'taper-with-between': ({ seam }, say) => ({
    message: `${say.thing(seam)} soll zugleich zwischen zwei Stellen („between“) und von einer zur anderen auslaufen.`,
    remedy: 'Geben Sie entweder „between“ mit einem Betrag an, oder „from“ und „to“.',
  }),
  'taper-without-length': ({ seam }, say) => ({
    message: `${say.thing(seam)}: Die beiden Stellen, zwischen denen sie ausläuft, sind eine.`,
    remedy: 'Geben Sie zwei Stellen an, die auseinander liegen.',
  }),
  'inset-without-depth': () => ({
    message: 'Ein eingesetzter V-Ausschnitt braucht eine Tiefe.',
    remedy: 'Geben Sie eine Tiefe über 0 an.',
  }),
  'half-width-or-shoulder': () => ({
    message: 'Eine halbe Weite und eine Schulterlänge sagen beide, wo der Ausschnitt endet.',
    remedy: 'Behalten Sie eines davon.',
  }),
  'shoulder-not-cut': ({ shape }, say) => ({
    message: `Ein Ausschnitt der Form ${say.written(shape)} schneidet die Schulter nicht.`,
    remedy: 'Lassen Sie „shoulder“ weg, oder wählen Sie eine andere Form, etwa V oder round.',
  }),
  'shoulder-cut': ({ edge, changeMm, shoulderMm, sewnTo }, say) => ({
    message: `${say.thing(edge)} ist ${say.slight(Math.abs(changeMm))} ${changeMm < 0 ? 'kürzer' : 'länger'} als vorher und passt nicht mehr: ${say.things(sewnTo)}.`,
    remedy: `Schneiden Sie auch diesen Ausschnitt neu, mit shoulder: ${typedLength(shoulderMm, say.unit)}.`,
  }),
  'no-allowance-there': ({ edge, kind }, say) => ({
    message: `${say.thing(edge)} ${kind === 'fold' ? 'liegt im Stoffbruch' : 'bleibt offenkantig'} und hat keine Zugabe.`,
    remedy:
      kind === 'fold'
        ? 'Klappen Sie das Teil erst auf, oder lassen Sie diese Kante weg.'
        : 'Lassen Sie diese Kante weg.',
  }),
  'not-drafted-here': ({ piece }, say) => ({
    message: `Wie ${say.thing(piece)} gezeichnet wurde, ist nicht bekannt, da es hier kein Schritt tat.`,
    remedy: 'Zeichnen Sie es unter demselben Namen neu; es nimmt seinen Platz ein.',
  }),
  'nothing-to-refresh': () => ({
    message: 'Kein Schritt davor hat ein Teil für eine Kante gezeichnet; es wurde nichts neu gezeichnet.',
    remedy: 'Lassen Sie den Schritt weg, oder setzen Sie ihn hinter die Zeichnungen.',
  }),
  'last-piece': ({ piece }, say) => ({
    message: `${say.thing(piece)} ist das einzige Teil des Schnitts.`,
    remedy: 'Behalten Sie es, oder beginnen Sie mit einem anderen Schnitt.',
  }),
  'made-for-removed-piece': ({ piece, removed }, say) => ({
    message: `${say.thing({ piece })} war für eine Kante von ${say.thing({ piece: removed })} gemacht, das nicht mehr da ist.`,
    remedy: `Entfernen Sie es auch (${stepText('remove piece', { piece })}), oder zeichnen Sie es neu.`,
  }),
  'notches-already-there': ({ seam }, say) => ({
    message: `${say.thing(seam)} hatte diese Passzeichen schon; keines kam dazu.`,
    remedy: 'Wählen Sie andere Stellen, oder lassen Sie den Schritt weg.',
  }),
};
