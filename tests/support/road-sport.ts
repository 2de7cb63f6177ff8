/** The demonstration bike of the first sight, for tests of floors below the documents. */
import { DEMO_BIKES } from '../../src/document/demos/demo-bikes.ts';

export const [roadSport] = DEMO_BIKES;
