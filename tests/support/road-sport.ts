/** The demonstration bikes, that of the first sight first, for tests of floors below the documents. */
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';

export const demoBikes = DEMO_BIKES;
export const [roadSport] = DEMO_BIKES;
