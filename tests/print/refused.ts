import { PatternError } from '@paperhinge/geometry';
import { told } from '../support/told.js';

/** What a promised thing is refused with, in English. Fails where nothing is refused. */
export async function refusedWith(work: Promise<unknown>) {
  try {
    await work;
  } catch (error) {
    if (!(error instanceof PatternError)) throw error;
    return told(error);
  }
  throw new Error('Nothing was refused.');
}
