import { expect, it } from 'vitest';
import { exerciseSchema } from '../course/schema/exercise.ts';
import { parseYaml } from './read-yaml-folder.ts';

const good = `
uid: ex-try
worksheet: current-from-nameplate
title: A title
site: tollow-farm
minutes: 4
level: 1
objective: Find it.
outOfScope: The rest.
story: A story.
given: { realPowerW: 1 kW }
steps: { currentA: asked }
cautions: []
`;

const parse = (text: string) => parseYaml(text, 'content/exercises/01/try.yaml', exerciseSchema);

it('reads a good file', () => {
  expect(parse(good).title).toBe('A title');
});

it('tells an author what is wrong with a file: file, field, expected, found, hint', () => {
  expect(() =>
    parse(good.replace('level: 1', 'level: 7').replace('story: A story.\n', '').replace('site:', 'place:')),
  ).toThrowErrorMatchingInlineSnapshot(`
    [Error: 
    file:     content/exercises/01/try.yaml
    field:    site
    expected: string
    found:    nothing
    hint:     add the field.

    file:     content/exercises/01/try.yaml
    field:    level
    expected: 1 or 2 or 3
    found:    7
    hint:     Invalid option: expected one of 1|2|3

    file:     content/exercises/01/try.yaml
    field:    story
    expected: string
    found:    nothing
    hint:     add the field.

    file:     content/exercises/01/try.yaml
    field:    the whole file
    expected: only the fields of the schema
    found:    place
    hint:     correct a misspelt name; text with a comma inside { } needs quotes.
    ]
  `);
});

it('tells an author where YAML itself cannot be read', () => {
  expect(() => parse('title: "never closed\nuid: ex-try')).toThrow(
    /file: {5}content\/exercises\/01\/try\.yaml[\s\S]*readable YAML/,
  );
});
