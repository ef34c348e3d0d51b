// What prints, apart from what draws: loaded once pages or a report are asked for.
export { doJob, jobTold, printedOn } from '@paperhinge/sheet';
