import type { MatchingSentences, MatchingTellings } from '@paperhinge/alter/sayings';
import type { Sentences, Tellings } from '../catalogue.js';
import { stepText } from '../step-text.js';

export const matching: Tellings<MatchingTellings> = {
  'sewn-edge-changed': ({ edges, partners, changeMm, canMatch, drafted, refreshes }, say) => ({
    message: `In der Naht um ${say.slight(Math.abs(changeMm))} ${changeMm < 0 ? 'kürzer' : 'länger'} durch diesen Schritt: ${say.things(edges)}; nicht aber: ${say.things(partners)}.`,
    remedy: drafted
      ? refreshes
        ? `Schreiben Sie nach diesem Schritt ${stepText('refresh', { pieces: [drafted.piece ?? ''] })}.`
        : `Zeichnen Sie „${say.name(drafted.piece ?? '')}“ nach diesem Schritt neu.`
      : canMatch
        ? 'Fügen Sie diesem Schritt matching: yes hinzu, um beide Seiten zu ändern.'
        : `Ändern Sie im nächsten Schritt ebenso: ${say.things(partners)}.`,
  }),
  'nothing-to-match': ({ piece }, say) => ({
    message: `Kein Teil neben ${say.thing(piece)} hat Kanten, die diesen entsprechen; nur dieses wurde geändert.`,
    remedy: 'Geben Sie den anderen Teilen eigene Schritte, wenn sie sich mit ändern sollen.',
  }),
  'seam-goes-on-nowhere': ({ seam }, say) => ({
    message: `Keine Naht setzt ${say.thing(seam)} an einem Ende fort, das dieser Schritt versetzt hat; nur sie wurde geändert.`,
    remedy: 'Geben Sie anderen Nähten eigene Schritte, wenn sie sich mit ändern sollen.',
  }),
};

/** Was ein Schritt an mehreren Teilen oder Nähten tat. */
export const matchingDone: Sentences<MatchingSentences> = {
  'did-each': ({ steps }, say) => steps.map(say.saying).join(' '),
};
