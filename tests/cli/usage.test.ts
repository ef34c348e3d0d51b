import { describe, expect, test } from 'vitest';
import { run } from '../../packages/cli/src/run.js';
import { english } from '../../packages/cli/src/usage/english.js';
import { german } from '../../packages/cli/src/usage/german.js';
import { command } from './command.js';

const commands = ['alter', 'check', 'measure', 'print', 'trace', 'sheet', 'name'] as const;
const flowing = (text: string) => text.replace(/\s+/g, ' ');
const helpOf = async (args: readonly string[]) => flowing((await command(...args, '--help')).stdout);

/** All sentences of a table, without the short words that stand for what is given. */
const sentences = (table: typeof english | typeof german, of: 'any' | (typeof commands)[number]) =>
  Object.values(table[of]);

describe('help in the language asked for', () => {
  test('every sentence of the other language stands in the help, and none in English', async () => {
    for (const name of commands) {
      const said = await helpOf([name, '--language', 'de']);
      for (const text of sentences(german, name)) expect(said).toContain(text);
      for (const text of [...sentences(english, name), ...sentences(english, 'any'), english.help])
        expect(said).not.toContain(text);
      expect(said).not.toMatch(/Usage:|Options:|Arguments:|Commands:|\[options\]|default:|choices:/);
      expect(said).toMatch(new RegExp(`^Aufruf: paperhinge ${name} \\[Optionen\\]`));
    }
  });

  test('what stands for a file or a length is in that language, too', async () => {
    const said = await helpOf(['print', '--language=de']);
    expect(said).toContain('-o, --output <Datei>');
    expect(said).toContain('--overlap <Länge>');
    expect(said).toContain('(zur Wahl: "en", "de")');
    for (const word of Object.values(english.given)) expect(said).not.toMatch(new RegExp(`<${word}>`));
    expect(await helpOf(['trace', '--language=de'])).toContain('(Vorgabe: "stitching")');
  });

  test('the list of commands, and what their exit codes mean', async () => {
    const said = await helpOf(['--language', 'de']);
    for (const name of commands) expect(said).toContain(flowing(german[name].does));
    expect(said).toContain('Befehle:');
    expect(said).toContain(german.exitCodes);
    expect(said).not.toContain(english.exitCodes);
  });

  test('English is said as before', async () => {
    for (const name of commands) {
      const said = await helpOf([name]);
      for (const text of sentences(english, name)) expect(said).toContain(text);
      expect(said).toMatch(new RegExp(`^Usage: paperhinge ${name} \\[options\\]`));
    }
    expect(await helpOf([])).toContain(
      `Commands: alter [options] <sheet> ${english.alter.does} check [options] <pattern> ${english.check.does}`,
    );
  });
});

describe("the machine's language", () => {
  const speaks = async (environment: Record<string, string>, ...args: readonly string[]) => {
    let said = '';
    const to = (text: string) => {
      said += text;
    };
    await run([...args, '--help'], { stdout: to, stderr: to, watched: false, environment });
    return said.startsWith('Aufruf:') ? 'de' : 'en';
  };

  test('is taken where no argument asks for one', async () => {
    expect(await speaks({ LANG: 'de_AT.UTF-8' })).toBe('de');
    expect(await speaks({ LANG: 'de' })).toBe('de');
    expect(await speaks({ LC_MESSAGES: 'de_DE', LANG: 'fr_FR' })).toBe('de');
    expect(await speaks({ LC_ALL: '', LANG: 'de_DE.UTF-8' })).toBe('de');
    expect(await speaks({ LANG: 'de_DE.UTF-8' }, 'print', '--language', 'en')).toBe('en');
  });

  test('is English for any other, and where programs are told to speak to programs', async () => {
    for (const environment of [
      {},
      { LANG: 'C' },
      { LANG: 'POSIX' },
      { LANG: 'C.UTF-8' },
      { LANG: 'den_CA' },
      { LC_ALL: 'C', LANG: 'de_DE.UTF-8' },
      { LC_ALL: 'en_GB', LC_MESSAGES: 'de_DE' },
    ])
      expect(await speaks(environment)).toBe('en');
  });
});

describe('what is wrong with the arguments', () => {
  const said = async (...args: readonly string[]) => {
    const { code, stderr } = await command(...args, '--language', 'de');
    expect(code).toBe(2);
    return stderr.trim().replace(/: Siehe paperhinge --help\.$/, '');
  };

  test('is said in the language asked for, whatever is wrong', async () => {
    expect(await said('frobnicate')).toBe('paperhinge: Den Befehl „frobnicate“ gibt es nicht');
    expect(await said('prin')).toBe('paperhinge: Den Befehl „prin“ gibt es nicht (meinten Sie print?)');
    expect(await said('check')).toBe('paperhinge: „Schnitt“ fehlt');
    expect(await said('check', 'a', 'b')).toBe(
      'paperhinge: Zu viele Angaben für „check“: 1 erwartet, 2 bekommen',
    );
    expect(await said('check', 'a', '--pictur', 'b')).toBe(
      'paperhinge: Die Option „--pictur“ gibt es nicht (meinten Sie --picture?)',
    );
    expect(await said('print', 'a')).toBe('paperhinge: Die Option „-o, --output <Datei>“ fehlt');
    expect(await said('print', 'a', '-o', 'x.pdf', '--projector', 'blue')).toBe(
      'paperhinge: „blue“ geht nicht bei „--projector <Grund>“; zur Wahl: dark, light',
    );
    expect(await said('print', 'a', '-o', 'x.pdf', '--paper', 'a4', '--show', 'mirrored')).toBe(
      'paperhinge: „--show <wie>“ und „--paper <Papier>“ gehen nicht zusammen',
    );
    const { stderr } = await command('print', 'a', '--language=de', '-o');
    expect(stderr).toMatch(/^paperhinge: Nach „-o, --output <Datei>“ fehlt die Angabe: /);
  });
});
