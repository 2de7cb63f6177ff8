/** Tests of whole links. */
import { expect, it } from 'vitest';
import { linksBetween, linksFrom, linksPossible, linksUpTo, MOST_LINKS } from './whole-links.ts';

const even = { halfLink: false };
const halves = { halfLink: true };

it('an even number of links can be joined, an odd one only with a half link', () => {
  expect(linksPossible(114, even)).toBe(true);
  expect(linksPossible(113, even)).toBe(false);
  expect(linksPossible(113, halves)).toBe(true);
  for (const links of [113.5, 0, -114, NaN, Infinity, MOST_LINKS + 2])
    expect(linksPossible(links, halves)).toBe(false);
});

it('the next chain up and down from a length are whole, and a whole length is its own', () => {
  expect([linksFrom(113.2, even), linksUpTo(113.2, even)]).toEqual([114, 112]);
  expect([linksFrom(113.2, halves), linksUpTo(113.2, halves)]).toEqual([114, 113]);
  expect([linksFrom(114 + 1e-12, even), linksUpTo(114 - 1e-12, even)]).toEqual([114, 114]);
});

it('the chains between two lengths are all that can be joined, or none', () => {
  expect(linksBetween(109.2, 114.9, even)).toEqual([110, 112, 114]);
  expect(linksBetween(110.2, 112.1, halves)).toEqual([111, 112]);
  expect(linksBetween(110.2, 111.8, even)).toEqual([]);
  expect(linksBetween(110, Infinity, even)).toEqual([]);
  expect(linksBetween(MOST_LINKS - 1, 1e9, even)).toEqual([MOST_LINKS]);
});
