import type { BecameTellings } from '@paperhinge/alter/sayings';
import type { Tellings } from '../catalogue.js';
import { edgeText, typedLength } from '../step-text.js';

/** Was ein Schritt nicht übrig ließ. */
export const became: Tellings<BecameTellings> = {
  'notch-cut-away': ({ notch, edge, atMm }, say) => ({
    message: `${say.thing(edge)}: ${notch === undefined ? 'Ein Passzeichen' : `Das Passzeichen ${say.written(notch)}`} bei ${say.length(atMm)} wurde weggeschnitten.`,
    remedy: 'Streichen Sie sein Gegenstück auf der anderen Seite der Naht, oder zeichnen Sie beide neu an.',
  }),
  'edge-cut-away': ({ edge }, say) => ({
    message: `${say.thing(edge)} wurde ganz weggeschnitten.`,
    remedy: 'Schneiden Sie weniger ab, wenn sie noch gebraucht wird.',
  }),
  'line-cut-away': ({ line }, say) => ({
    message: `${say.thing(line)} lag in dem, was weggeschnitten wurde, und ist mit ihm fort.`,
    remedy: 'Zeichnen Sie sie neu, wenn sie noch gebraucht wird.',
  }),
  'mark-cut-away': ({ mark }, say) => ({
    message: `${say.thing(mark)} lag in dem, was weggeschnitten wurde, und ist mit ihm fort.`,
    remedy: 'Zeichnen Sie ihn neu an, wenn er noch gebraucht wird.',
  }),
  'seam-gone': ({ seam, edges }, say) => ({
    message: `${say.thing(seam)} ist fort: Es blieb nichts von ${say.things(edges)}.`,
    remedy: 'Geben Sie an, woran das andere Teil nun genäht wird.',
  }),
  'seam-run-gone': ({ seam, edges }, say) => ({
    message: `Zu ${say.thing(seam)} gehört nicht mehr: ${say.things(edges)}.`,
    remedy: 'Geben Sie an, was an die übrigen Kanten genäht wird.',
  }),
  'opening-follows': ({ edge, wasMm, edgeMm }, say) => ({
    message: `${say.thing(edge)} war von Ende zu Ende offen, ${say.length(wasMm)}, und ist es noch: jetzt ${say.length(edgeMm)}.`,
    remedy: 'Verteilen Sie Knöpfe neu, und kaufen Sie Reißverschluss oder Besatz nach der neuen Länge.',
  }),
  'opening-kept': ({ edge, openMm, wasMm, edgeMm }, say) => ({
    message: `${say.thing(edge)} ist jetzt ${say.length(edgeMm)} lang statt ${say.length(wasMm)}; der Schlitz bleibt ${say.length(openMm)}.`,
    remedy: `Soll sie von Ende zu Ende offen sein, sagen Sie es über den Schritten, dann folgt er: opening: { ${edgeText(edge)}: ${typedLength(wasMm, say.unit)} }.`,
  }),
  'fastening-gone': ({ fastening, edge }, say) => ({
    message: `${say.thing(fastening)} ist fort: ${say.thing(edge)} wurde weggeschnitten.`,
    remedy: 'Setzen Sie einen neuen ein, wenn das Kleidungsstück ihn noch braucht.',
  }),
};
