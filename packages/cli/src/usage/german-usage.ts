import { Help } from 'commander';
import { german } from './german.js';
import type { Usage } from './usage.js';

const base = new Help();

/** What commander sets itself, in German. */
const titles: Readonly<Record<string, string>> = {
  'Usage:': 'Aufruf:',
  'Arguments:': 'Angaben:',
  'Options:': 'Optionen:',
  'Commands:': 'Befehle:',
};
const withBrackets = (usage: string): string =>
  usage.replace('[options]', '[Optionen]').replace('[command]', '[Befehl]');
const withRemarks = (remarks: string): string =>
  remarks.replace(/^ \(choices: /, ' (zur Wahl: ').replace(/\bdefault: /, 'Vorgabe: ');

/** The usage in German. What commander says is known by its code; what is new to us stays as it says it. */
export const germanUsage: Usage = {
  texts: german,
  help: {
    styleTitle: title => titles[title] ?? title,
    commandUsage: command => withBrackets(base.commandUsage(command)),
    subcommandTerm: command => withBrackets(base.subcommandTerm(command)),
    optionDescription: option =>
      option.description + withRemarks(base.optionDescription(option).slice(option.description.length)),
  },
  wrong: (code, message) => {
    const [known, say] = errors[code] ?? [];
    const found = known?.exec(message);
    return found && say ? say(...found.slice(1)) : message;
  },
};

const meant = (suggested: string | undefined): string =>
  suggested === undefined
    ? ''
    : ` (meinten Sie ${suggested.replace(/^one of /, '').replace(/, (?=[^,]*$)/, ' oder ')}?)`;
const suggestion = String.raw`(?:\s\(Did you mean (.+)\?\))?$`;

type Say = (...facts: readonly (string | undefined)[]) => string;

/** The sentences of commander 14, by their codes [read]. */
const errors: Readonly<Record<string, readonly [RegExp, Say]>> = {
  'commander.missingArgument': [/^missing required argument '(.+)'$/, name => `„${name}“ fehlt`],
  'commander.optionMissingArgument': [
    /^option '(.+)' argument missing$/,
    flags => `Nach „${flags}“ fehlt die Angabe`,
  ],
  'commander.missingMandatoryOptionValue': [
    /^required option '(.+)' not specified$/,
    flags => `Die Option „${flags}“ fehlt`,
  ],
  'commander.conflictingOption': [
    /^option '(.+)' cannot be used with option '(.+)'$/,
    (one, other) => `„${one}“ und „${other}“ gehen nicht zusammen`,
  ],
  'commander.unknownOption': [
    new RegExp(`^unknown option '(.+)'${suggestion}`, 's'),
    (flag, instead) => `Die Option „${flag}“ gibt es nicht${meant(instead)}`,
  ],
  'commander.unknownCommand': [
    new RegExp(`^unknown command '(.+)'${suggestion}`, 's'),
    (name, instead) => `Den Befehl „${name}“ gibt es nicht${meant(instead)}`,
  ],
  'commander.excessArguments': [
    /^too many arguments(?: for '(.+)')?\. Expected (\d+) arguments? but got (\d+)$/,
    (of, expected, got) =>
      `Zu viele Angaben${of === undefined ? '' : ` für „${of}“`}: ${expected} erwartet, ${got} bekommen`,
  ],
  'commander.invalidArgument': [
    /^option '(.+)' argument '(.*)' is invalid\. Allowed choices are (.+)$/s,
    (flags, given, choices) => `„${given}“ geht nicht bei „${flags}“; zur Wahl: ${choices}`,
  ],
};
