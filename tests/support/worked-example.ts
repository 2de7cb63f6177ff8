/** Worked examples in docstrings: `Example: rake 24°, offset 30 mm → 92.02 mm.`, read into names, numbers and units. */
import ts from 'typescript';
import { radians } from '../../src/core/units/convert.ts';

/** A number as it is written: `30.4 mm` has the value 30.4, the unit mm and one digit after the point. */
export interface Written {
  readonly value: number;
  readonly unit: string;
  readonly digits: number;
}

/** What an example gives by name: a number, or the code of a tyre. */
export interface Given {
  readonly name: string;
  readonly is: Written | string;
}

export interface Example {
  /** The export whose docstring holds it. */
  readonly of: string;
  readonly given: readonly Given[];
  readonly result: Written;
  /** Of the function; null for what is no function. */
  readonly parameters: readonly Parameter[] | null;
}

/** A parameter by its name, or by the names of the members that it is taken apart into. */
export type Parameter = string | readonly string[];

const NUMBER = /^([−-]?\d+(?:\.(\d+))?)\s*(mm|°|kg|N\/mm|N·m|N|g|%|km\/h)?$/;
const TYRE = /^\d+\/\d+-\d+$/;

/** Every example in a file's docstrings; throws where a line that begins with `Example:` cannot be read. */
export function examplesIn(text: string): Example[] {
  const source = ts.createSourceFile('x.ts', text, ts.ScriptTarget.Latest, true);
  return source.statements.flatMap((statement) => {
    const lines = docOf(statement, text);
    return [...lines.matchAll(/\bExample: (.*?)\.(?= [A-Z]|$)/g)].map(([, words]) => ({
      ...readExample(words),
      of: nameOf(statement),
      parameters: parametersOf(statement),
    }));
  });
}

/** The docstring before a statement as one line of prose. */
function docOf(statement: ts.Statement, text: string): string {
  const comments = ts.getLeadingCommentRanges(text, statement.getFullStart()) ?? [];
  return comments
    .map(({ pos, end }) => text.slice(pos, end))
    .filter((comment) => comment.startsWith('/**'))
    .map((comment) => comment.slice(3, -2).replace(/^\s*\*/gm, ''))
    .join(' ')
    .replace(/\s+/g, ' ')
    .trim();
}

export function readExample(words: string): Pick<Example, 'given' | 'result'> {
  const [given, result, ...rest] = words.split(' → ');
  if (result === undefined || rest.length > 0) throw new Error(`no "→" or more than one: ${words}`);
  return { given: given.split(', ').map(readGiven), result: readWritten(result) };
}

function readGiven(words: string): Given {
  const [, name, is] = /^(\D.*?) ([−-]?\d.*)$/.exec(words) ?? [];
  if (name === undefined) throw new Error(`not a name and a number: ${words}`);
  return { name, is: TYRE.test(is) ? is : readWritten(is) };
}

function readWritten(words: string): Written {
  const [, number, digits, unit] = NUMBER.exec(words) ?? [];
  if (number === undefined) throw new Error(`not a number with a unit: ${words}`);
  return { value: Number(number.replace('−', '-')), unit: unit ?? '', digits: digits?.length ?? 0 };
}

/** How far a number may be from what is written: half of the last digit, and a rounding of the sum. */
export function halfDigit({ digits }: Written): number {
  return 0.5 * 10 ** -digits + 1e-12;
}

function nameOf(statement: ts.Statement): string {
  if (ts.isVariableStatement(statement)) return statement.declarationList.declarations[0].name.getText();
  if (ts.isFunctionDeclaration(statement)) return statement.name?.text ?? '';
  throw new Error(
    `an example belongs to a function or a reading, not to: ${statement.getText().slice(0, 60)}`,
  );
}

function parametersOf(statement: ts.Statement): Parameter[] | null {
  if (!ts.isFunctionDeclaration(statement)) return null;
  return statement.parameters.map(({ name }) =>
    ts.isObjectBindingPattern(name) ? name.elements.map((element) => element.name.getText()) : name.getText(),
  );
}

/**
 * The arguments of a function: a number by its parameter's name, angles in radians; an object by the names of its
 * members, or, where the function does not take it apart, by `parameter.member`.
 */
export function argumentsOf({ given, parameters }: Example): unknown[] {
  const numbers = new Map(given.map(({ name, is }) => [name, typeof is === 'string' ? is : inCore(is)]));
  const take = (name: string): unknown => {
    const value = numbers.get(name);
    numbers.delete(name);
    return value;
  };
  const found = (parameters ?? []).map((parameter) => {
    if (typeof parameter !== 'string')
      return Object.fromEntries(parameter.map((member) => [member, take(member)]));
    const members = [...numbers.keys()].filter((name) => name.startsWith(`${parameter}.`));
    if (members.length === 0) return take(parameter);
    return Object.fromEntries(members.map((name) => [name.slice(parameter.length + 1), take(name)]));
  });
  if (numbers.size > 0) throw new Error(`no parameters: ${[...numbers.keys()].join(', ')}`);
  return found;
}

function inCore({ value, unit }: Written): number {
  return unit === '°' ? radians(value) : value;
}
