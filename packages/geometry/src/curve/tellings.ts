import { anyRefusal, type NoFacts, type RefusalOf } from '../sayings.js';

/** What is told of curves, paths and regions. */
export interface CurveTellings {
  'coordinate-out-of-range': NoFacts;
  'not-a-number': { readonly what: 'parameter' | 'length' | 'distance' | 'allowance' | 'share' };
  'not-a-segment': NoFacts;
  'path-empty': NoFacts;
  'tolerance-not-positive': NoFacts;
  'length-too-short': { readonly lengthMm: number; readonly straightMm: number };
  'length-too-long': { readonly lengthMm: number; readonly straightMm: number };
  'too-few-points': NoFacts;
  'no-direction': NoFacts;
  'ends-meet': NoFacts;
  'no-curvature-join': NoFacts;
  'unknown-continuity': NoFacts;
  'region-not-closed': NoFacts;
}

export const refusal: RefusalOf<CurveTellings> = anyRefusal;
