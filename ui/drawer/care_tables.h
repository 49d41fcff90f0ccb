/* The numbers of the care page as rows of words, translated, in the units of the window. */
#pragma once

#include "making/care.h"
#include "making/spread.h"

/* Each gives rows of char ** for a table, and in titles (new) the titles of its columns. */
GPtrArray *rw_care_rows   (const RwCare *care, RwStyle style, GStrv *titles);
GPtrArray *rw_spread_rows (const RwSpread *spread, RwStyle style, GStrv *titles);
GPtrArray *rw_share_rows  (const RwSpread *spread, RwStyle style, GStrv *titles);

/* "10000 builds, seed 1. The neck wants a shim in 18.0 ± 0.4 of 100 builds ..."  New. */
char *rw_spread_words (const RwSpread *spread, RwStyle style);
