import { edgeNamed, edgeNames, type Pattern, type Piece } from '@paperhinge/geometry';
import { isTie } from '@paperhinge/geometry/measure';
import { isSewn } from '../edge-refs.js';
import { type Job, job } from './jobs.js';
import { saying } from './sentences.js';

/** Ties, straps and belts are sewn to themselves and turned before an end of them is sewn on. */
export const tieJobs = (pattern: Pattern): readonly Job[] =>
  pattern.pieces.filter(piece => isTie(pattern, piece)).map(piece => tieJob(pattern, piece));

function tieJob(pattern: Pattern, piece: Piece): Job {
  const { name } = piece;
  // It is turned through an end that is sewn on afterwards, or that stays open in a seam.
  const hasEnd = edgeNames(piece).some(
    edge => edgeNamed(piece, edge).kind !== 'fold' && isSewn(pattern, { piece: name, edge }),
  );
  return job(
    'layers',
    `turn ${name}`,
    {
      text: saying('job-tie', { piece: { piece: name }, hasEnd }),
      called: saying('called-of-piece', { what: 'piece', piece: { piece: name } }),
    },
    { pieces: [name] },
  );
}
