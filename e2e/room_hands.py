"""What keepers do in the Room place, in words: join, invite, share, look at a person."""

from playwright.sync_api import expect

INVITE = """async (role) => {
  const { live: { room }, people } = await app();
  const { invite } = await people();
  return (await invite(room.value, { role, hours: 1 })).link;
}"""


def join(thumb, link, keeper, phone):
    thumb.open(link[link.index("/join") :])
    thumb.type("Your name", keeper)
    thumb.type("A name for this phone", phone)
    thumb.tap("button", "Join")
    thumb.title("Round")


def invite(owner, role="keeper", hours="two days"):
    """A link from the Room place of an owner's phone."""
    owner.turn_to("/room/people")
    owner.tap("link", "Invite someone")
    owner.pick(role)
    owner.pick(hours)
    owner.tap("button", "Make the link")
    return made_link(owner)


def link_for(owner, role):
    """A link that this owner's phone asks for at once, where a story is about something else."""
    return owner.page.evaluate(INVITE, role)


def made_link(owner):
    return owner.page.locator(".invitation .link").inner_text()


def share(thumb):
    thumb.turn_to("/room")
    thumb.tap("button", "Share now")
    thumb.page.get_by_role("button", name="Share now").wait_for()


def hear_of_role(thumb):
    """Open the app again: it asks for its role when it opens, and then every quarter of an hour."""
    thumb.open("/room")
    share(thumb)


def person(thumb, name):
    thumb.turn_to("/room/people")
    thumb.tap("link", name)
    thumb.title(name)


def read_ammonia(thumb, tank, step="0.1"):
    """One reading of a tank, from the round."""
    thumb.turn_to("/")
    thumb.tap("link", tank)
    thumb.tap("link", "Test")
    thumb.tap("button", step, exact=True)
    thumb.tap("button", "Save 1 reading")
    # The words of a reading before this one may still be there.
    expect(thumb.page.get_by_role("button", name="Save 1 reading")).to_have_count(0)
    thumb.sees("1 reading saved on this phone")
