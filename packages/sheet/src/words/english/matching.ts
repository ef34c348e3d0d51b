import type { MatchingSentences, MatchingTellings } from '@paperhinge/alter/sayings';
import { capital } from '../capital.js';
import type { Sentences, Tellings } from '../catalogue.js';
import { stepText } from '../step-text.js';

export const matching: Tellings<MatchingTellings> = {
  'sewn-edge-changed': ({ edges, partners, changeMm, canMatch, drafted, refreshes }, say) => ({
    message: capital(
      `this step made ${say.things(edges)} ${say.slight(Math.abs(changeMm))} ${changeMm < 0 ? 'shorter' : 'longer'} in the seam, but not ${say.things(partners)}, which ${edges.length > 1 ? 'they are' : 'it is'} sewn to.`,
    ),
    remedy: drafted
      ? refreshes
        ? `Write ${stepText('refresh', { pieces: [drafted.piece ?? ''] })} after this step.`
        : `Draft the ${say.name(drafted.piece ?? '')} again after this step.`
      : canMatch
        ? 'Add matching: yes to this step, to change both sides.'
        : `Change ${say.things(partners)} likewise in the next step.`,
  }),
  'nothing-to-match': ({ piece }, say) => ({
    message: capital(
      `no piece beside ${say.thing(piece)} has edges that answer to these; it alone was changed.`,
    ),
    remedy: 'Give the other pieces steps of their own, if they are to change too.',
  }),
  'seam-goes-on-nowhere': ({ seam }, say) => ({
    message: capital(
      `no seam goes on from an end of ${say.thing(seam)} that this step moved; that seam alone was changed.`,
    ),
    remedy: 'Give other seams steps of their own, if they are to change too.',
  }),
};

/** What a step did to several pieces or seams. */
export const matchingDone: Sentences<MatchingSentences> = {
  'did-each': ({ steps }, say) => steps.map(say.saying).join(' '),
};
