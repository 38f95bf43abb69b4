/** What the trail keeps; each is shown in words by the page. */
export const deeds = [
  'bench-started',
  'signed-in',
  'password-changed',
  'invited',
  'link-made',
  'joined',
  'role-changed',
  'renamed',
  'left',
  'name-erased',
  'token-made',
  'token-revoked',
  'order-taken-out',
  'document-taken-out',
  'bench-taken-out',
] as const;
export type Deed = (typeof deeds)[number];

/** What a deed was about: ids and words of ours, never a name or a secret. */
export interface About {
  member?: string;
  token?: string;
  from?: string;
  to?: string;
  /** The kind of file, or the scope of a token. */
  kind?: string;
  diagram?: string;
}
