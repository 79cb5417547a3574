/** How a calculation says no: by a code whose words stand in its contract under `refusals`. */
export class Refusal extends Error {
  /** @param {string} code @param {string} [field] overrides the field named in the contract */
  constructor(code, field) {
    super(code);
    this.code = code;
    this.field = field;
  }
}
