/** What a person may do to a member of the room, by their roles. The server checks the same and decides. Pure. */

export const ROLES = ["owner", "keeper", "helper", "viewer"];

/**
 * @param {{id: string, role: string}} person
 * @param {{people: {id: string, role: string}[], me: string | undefined, role: string | null | undefined}} here
 * `me` and `role`: who looks
 */
export function powers(person, { people, me, role }) {
  const owner = role === "owner";
  const self = person.id === me;
  const last_owner = person.role === "owner" && people.filter((one) => one.role === "owner").length === 1;
  return {
    self,
    /** The last owner stays: a room always has one. */
    last_owner,
    change_role: owner && !last_owner,
    hand_over: owner && !self && person.role !== "owner",
    remove: owner && !self,
    leave: self && !last_owner,
    phones: owner || self,
  };
}
