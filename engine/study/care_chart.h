/* Charts of care: bars and small histograms with words beside them, read in black and white.
 *
 * Each chart is a sheet to be laid out at a scale of 1, from the origin up: as high as its rows need and as wide as
 * asked for, but no narrower than its words need.  Texts are translated.
 */
#pragma once

#include "making/care.h"
#include "making/spread.h"
#include "sheet/sheet.h"

typedef struct
{
  double width, height; /* mm */
} RwChartSize;

/* Where care pays: for each size how much of a limit the usual scatter of that size alone uses up, the most first; and
 * within what it should stay. */
RwSheet    *rw_care_chart       (const RwCare *care, double width, RwStyle style);
RwChartSize rw_care_chart_least (const RwCare *care, RwStyle style);

/* What comes out: for each result how builds spread about the plan, in parts of its limit, and what the spread comes
 * from. */
RwSheet    *rw_spread_chart       (const RwSpread *spread, double width, RwStyle style);
RwChartSize rw_spread_chart_least (const RwSpread *spread, RwStyle style);
