// One seed for every property, so that a run can be repeated; another is tried with PAPERHINGE_SEED=number.
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.PAPERHINGE_SEED ?? 20261125) });
