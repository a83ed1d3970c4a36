"""Days so many months later, and days between days, by dateutil.relativedelta and datetime.

Run: python3 test/references/dateutil-months.py > test/references/dateutil-months.json
"""

import json
import random
from datetime import date, timedelta

import dateutil
from dateutil.relativedelta import relativedelta

random.seed(20261128)
first = date(1900, 1, 1)
ends = [date(2026, 1, 31), date(2028, 1, 31), date(2024, 2, 29), date(2026, 8, 31), date(2000, 2, 29), date(1999, 12, 31),
        date(2100, 1, 31), date(2026, 3, 30), date(2027, 11, 30)]
days = ends + [first + timedelta(days=random.randrange(110_000)) for _ in range(120)]
rows = []
for day in days:
    months = random.choice([1, 1, 2, 3, 6, 12, 18, 24, 48, 60, random.randrange(1, 400)])
    later = day + relativedelta(months=months)
    rows.append([day.isoformat(), months, later.isoformat(), (later - day).days])
for day in ends:
    for months in (1, 12, 13):
        later = day + relativedelta(months=months)
        rows.append([day.isoformat(), months, later.isoformat(), (later - day).days])

print(json.dumps({"by": f"dateutil {dateutil.__version__}", "rows": rows}))
