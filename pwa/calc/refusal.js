/** How a calculation refuses: by a code whose words are in its contract under `refusals`. */
export class Refusal extends Error {
  /** @param {string} code @param {string} [field] overrides the field named in the contract */
  constructor(code, field) {
    super(code);
    this.code = code;
    this.field = field;
  }
}
