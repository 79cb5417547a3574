"""Recurrence rules against the worked examples of RFC 5545, section 3.8.5.3 (published), in both languages.

All examples except those with parts that are not supported: HOURLY, MINUTELY, BYYEARDAY, BYWEEKNO. Those are refused.
Each starts at 09:00 in New York, summer and winter, unless it says otherwise.
"""

import calendar
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest
from limnary.ids import ms_of, utc
from limnary.recurrence import BadRule, occurrences
from recurrence_phone import RecurrencePhone

NEW_YORK = "America/New_York"
MONTHS = {name: number for number, name in enumerate(calendar.month_abbr)}
JANUARIES = " ".join(f"{year} Jan {','.join(map(str, range(1, 32)))}" for year in (1998, 1999, 2000))
UP_TO_CHRISTMAS = "1997 Sep 2,9,16,23,30 Oct 7,14,21,28 Nov 4,11,18,25 Dec 2,9,16,23"
DECADE = " ".join(f"{year} Jun 10 Jul 10" for year in range(1997, 2002))

# (start, rule, the dates that the RFC prints, with `...` at the end if they continue).
EXAMPLES = [
    ("1997-09-02", "FREQ=DAILY;COUNT=10", "1997 Sep 2,3,4,5,6,7,8,9,10,11"),
    ("1997-09-02", "FREQ=DAILY;INTERVAL=10;COUNT=5", "1997 Sep 2,12,22 Oct 2,12"),
    ("1998-01-01", "FREQ=YEARLY;UNTIL=20000131T140000Z;BYMONTH=1;BYDAY=SU,MO,TU,WE,TH,FR,SA", JANUARIES),
    ("1998-01-01", "FREQ=DAILY;UNTIL=20000131T140000Z;BYMONTH=1", JANUARIES),
    ("1997-09-02", "FREQ=WEEKLY;COUNT=10", "1997 Sep 2,9,16,23,30 Oct 7,14,21,28 Nov 4"),
    ("1997-09-02", "FREQ=WEEKLY;UNTIL=19971224T000000Z", UP_TO_CHRISTMAS),
    ("1997-09-02", "FREQ=WEEKLY;INTERVAL=2;WKST=SU",
     "1997 Sep 2,16,30 Oct 14,28 Nov 11,25 Dec 9,23 1998 Jan 6,20 Feb 3,17 ..."),
    ("1997-09-02", "FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH", "1997 Sep 2,4,9,11,16,18,23,25,30 Oct 2"),
    ("1997-09-02", "FREQ=WEEKLY;COUNT=10;WKST=SU;BYDAY=TU,TH", "1997 Sep 2,4,9,11,16,18,23,25,30 Oct 2"),
    ("1997-09-01", "FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR",
     "1997 Sep 1,3,5,15,17,19,29 Oct 1,3,13,15,17,27,29,31 Nov 10,12,14,24,26,28 Dec 8,10,12,22"),
    ("1997-09-02", "FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH", "1997 Sep 2,4,16,18,30 Oct 2,14,16"),
    ("1997-09-05", "FREQ=MONTHLY;COUNT=10;BYDAY=1FR",
     "1997 Sep 5 Oct 3 Nov 7 Dec 5 1998 Jan 2 Feb 6 Mar 6 Apr 3 May 1 Jun 5"),
    ("1997-09-05", "FREQ=MONTHLY;UNTIL=19971224T000000Z;BYDAY=1FR", "1997 Sep 5 Oct 3 Nov 7 Dec 5"),
    ("1997-09-07", "FREQ=MONTHLY;INTERVAL=2;COUNT=10;BYDAY=1SU,-1SU",
     "1997 Sep 7,28 Nov 2,30 1998 Jan 4,25 Mar 1,29 May 3,31"),
    ("1997-09-22", "FREQ=MONTHLY;COUNT=6;BYDAY=-2MO", "1997 Sep 22 Oct 20 Nov 17 Dec 22 1998 Jan 19 Feb 16"),
    ("1997-09-28", "FREQ=MONTHLY;BYMONTHDAY=-3", "1997 Sep 28 Oct 29 Nov 28 Dec 29 1998 Jan 29 Feb 26 ..."),
    ("1997-09-02", "FREQ=MONTHLY;COUNT=10;BYMONTHDAY=2,15", "1997 Sep 2,15 Oct 2,15 Nov 2,15 Dec 2,15 1998 Jan 2,15"),
    ("1997-09-30", "FREQ=MONTHLY;COUNT=10;BYMONTHDAY=1,-1",
     "1997 Sep 30 Oct 1,31 Nov 1,30 Dec 1,31 1998 Jan 1,31 Feb 1"),
    ("1997-09-10", "FREQ=MONTHLY;INTERVAL=18;COUNT=10;BYMONTHDAY=10,11,12,13,14,15",
     "1997 Sep 10,11,12,13,14,15 1999 Mar 10,11,12,13"),
    ("1997-09-02", "FREQ=MONTHLY;INTERVAL=2;BYDAY=TU",
     "1997 Sep 2,9,16,23,30 Nov 4,11,18,25 1998 Jan 6,13,20,27 Mar 3,10,17,24,31 ..."),
    ("1997-06-10", "FREQ=YEARLY;COUNT=10;BYMONTH=6,7", DECADE),
    ("1997-03-10", "FREQ=YEARLY;INTERVAL=2;COUNT=10;BYMONTH=1,2,3",
     "1997 Mar 10 1999 Jan 10 Feb 10 Mar 10 2001 Jan 10 Feb 10 Mar 10 2003 Jan 10 Feb 10 Mar 10"),
    ("1997-05-19", "FREQ=YEARLY;BYDAY=20MO", "1997 May 19 1998 May 18 1999 May 17 ..."),
    ("1997-03-13", "FREQ=YEARLY;BYMONTH=3;BYDAY=TH",
     "1997 Mar 13,20,27 1998 Mar 5,12,19,26 1999 Mar 4,11,18,25 ..."),
    ("1997-06-05", "FREQ=YEARLY;BYDAY=TH;BYMONTH=6,7,8",
     "1997 Jun 5,12,19,26 Jul 3,10,17,24,31 Aug 7,14,21,28 1998 Jun 4,11,18,25 Jul 2,9,16,23,30 Aug 6,13,20,27"
     " 1999 Jun 3,10,17,24 Jul 1,8,15,22,29 Aug 5,12,19,26 ..."),
    # The RFC excludes the start by an EXDATE; here a start counts only if the rule gives it.
    ("1997-09-02", "FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13", "1998 Feb 13 Mar 13 Nov 13 1999 Aug 13 2000 Oct 13 ..."),
    ("1997-09-13", "FREQ=MONTHLY;BYDAY=SA;BYMONTHDAY=7,8,9,10,11,12,13",
     "1997 Sep 13 Oct 11 Nov 8 Dec 13 1998 Jan 10 Feb 7 Mar 7 Apr 11 May 9 Jun 13 ..."),
    ("1996-11-05", "FREQ=YEARLY;INTERVAL=4;BYMONTH=11;BYDAY=TU;BYMONTHDAY=2,3,4,5,6,7,8",
     "1996 Nov 5 2000 Nov 7 2004 Nov 2 ..."),
    ("1997-09-04", "FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3", "1997 Sep 4 Oct 7 Nov 6"),
    ("1997-09-29", "FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2",
     "1997 Sep 29 Oct 30 Nov 27 Dec 30 1998 Jan 29 Feb 26 Mar 30 ..."),
    ("1997-08-05", "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO", "1997 Aug 5,10,19,24"),
    ("1997-08-05", "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU", "1997 Aug 5,17,19,31"),
    ("2007-01-15", "FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5", "2007 Jan 15,30 Feb 15 Mar 15,30"),
]  # fmt: skip
NOT_READ = [
    "FREQ=HOURLY;INTERVAL=3;UNTIL=19970902T170000Z",
    "FREQ=MINUTELY;INTERVAL=15;COUNT=6",
    "FREQ=YEARLY;INTERVAL=3;COUNT=10;BYYEARDAY=1,100,200",
    "FREQ=YEARLY;BYWEEKNO=20;BYDAY=MO",
]
FAR = ms_of("2040-01-01T00:00:00Z")


@pytest.fixture(scope="module")
def phone():
    made = RecurrencePhone()
    yield made
    made.close()


def new_york(*date_time: int) -> int:
    return round(datetime(*date_time, tzinfo=ZoneInfo(NEW_YORK)).timestamp() * 1000)


def printed(dates: str) -> tuple[list[int], bool]:
    """The instants of the printed dates, and whether they continue."""
    out, year, month = [], 0, 0
    for word in dates.removesuffix(" ...").split():
        if word in MONTHS:
            month = MONTHS[word]
        elif word.isdecimal() and len(word) == 4:
            year = int(word)
        else:
            out += [new_york(year, month, int(day), 9) for day in word.split(",")]
    return out, dates.endswith(" ...")


@pytest.mark.parametrize(("start", "rule", "dates"), EXAMPLES, ids=[f"{s} {r}" for s, r, _ in EXAMPLES])
def test_the_examples_of_the_rfc(start, rule, dates, phone):
    year, month, day = map(int, start.split("-"))
    starts_at = utc(new_york(year, month, day, 9))
    expected, goes_on = printed(dates)
    most = len(expected) if goes_on else len(expected) + 5
    asked = (rule, starts_at, NEW_YORK, 0, FAR, most)
    assert occurrences(*asked) == expected
    assert phone.expand(*asked) == expected


def test_every_twenty_minutes_of_a_working_day(phone):
    rule = "FREQ=DAILY;BYHOUR=9,10,11,12,13,14,15,16;BYMINUTE=0,20,40"
    expected = [
        new_york(1997, 9, day, hour, minute) for day in (2, 3) for hour in range(9, 17) for minute in (0, 20, 40)
    ]
    asked = (rule, utc(expected[0]), NEW_YORK, 0, FAR, len(expected))
    assert occurrences(*asked) == phone.expand(*asked) == expected


@pytest.mark.parametrize("rule", NOT_READ)
def test_what_is_not_read_is_refused(rule, phone):
    with pytest.raises(BadRule):
        occurrences(rule, "1997-09-02T13:00:00Z", NEW_YORK, 0, FAR)
    assert phone.expand(rule, "1997-09-02T13:00:00Z", NEW_YORK, 0, FAR) == {"bad": True}
