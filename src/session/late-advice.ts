/** What advises about a bike and warns of it, in one part that is fetched after the first sight. */
export { noStandAdvice } from '../words/trouble/no-stand-advice.ts';
export { warningLine, warningWords } from '../words/trouble/warning-words.ts';
export { tightChain, withBarTight } from './tight-chain.ts';
export { warnedInStates, withElsewhere } from './warned-elsewhere.ts';
