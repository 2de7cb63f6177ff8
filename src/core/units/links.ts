/** Links of a chain, counted. */
import { asInCore, inBothSystems, type Quantity } from './quantity.ts';

export const links: Quantity = {
  fileUnit: '1',
  ...inBothSystems('links', 0),
  fromCore: asInCore,
  typed: { links: 1, link: 1 },
  advice: 'Count links here.',
  indistinct: 0.5,
  noticed: 1,
  leastTold: 0,
  counted: { name: 'Links', one: 'link', usual: 110 },
};
