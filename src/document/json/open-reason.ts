/** Why a file could not be opened, as a kind for programs and a sentence for people. */

export type OpenReasonKind =
  | 'unreadable'
  | 'tooLarge'
  | 'notText'
  | 'empty'
  | 'tooDeep'
  | 'cutOff'
  | 'notJson'
  | 'repeatedName'
  | 'notOurs'
  | 'schemaUnreadable'
  | 'newer'
  | 'fieldMissing'
  | 'fieldWrong';

export interface OpenReason {
  readonly kind: OpenReasonKind;
  readonly sentence: string;
  /** The field in the way, where there is one. */
  readonly path?: string;
}
