/** English: what is written down at the tank. Meals, doses, notes and photos, the timeline, the trends. */

/** @type {Record<string, string | Partial<Record<Intl.LDMLPluralRule, string>>>} */
export const en_journal = {
  "write_down.title": "Write down",
  "write_down.feed": "Feed",
  "write_down.dose": "Dose",
  "write_down.note": "Note",

  "amount.less": "{step} less",
  "amount.more": "{step} more",
  "amount.type": "{amount}, type another figure",

  "feed.title": "Feed",
  "feed.grams": "Food, dry",
  "feed.log": "Log {amount}",
  "feed.none": "Nothing today",
  "feed.never": "No meal is written down yet.",
  "feed.last": "Last: {amount}, {when}.",
  "feed.last_food": "Last: {amount} of {food}, {when}.",
  "feed.last_none": "Last: nothing, {when}.",
  "feed.from_meals": "the usual meal here",
  "feed.from_tank": "this tank’s usual food of a day",
  "feed.from_pinch": "a pinch for a few small fish: weigh yours once",
  "feed.from_keeper": "the usual meal here is {usual}",
  "feed.food": "Food",
  "feed.other": "Another food",
  "feed.protein": "{percent} % protein",
  "feed.becomes": "What it becomes",
  "feed.nitrogen": "Eaten, it becomes about {mg} mg of ammonia nitrogen: a rise of {rise} mg N/L here, if neither bacteria nor plants took it up.",
  "feed.assumed": "Counted with {percent} % protein, for none is set down.",
  "feed.saved": "{tank}: {amount} of food saved on this phone",
  "feed.saved_none": "{tank}: nothing fed, saved on this phone",
};
