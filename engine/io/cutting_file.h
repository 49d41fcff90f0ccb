/* A cutting plan as text for people, and as CSV and JSON for programs. */
#pragma once

#include "list_file.h"
#include "stock/shortage.h"
#include "stock/stock_remedy.h"

typedef struct
{
  const RwDesign  *design;
  const RwCutting *cutting;
  GPtrArray       *remedies; /* of RwStockRemedy; NULL: not looked for */
} RwCuttingReport;

/* text: boards and bars with their cuts, what is missing, what to buy, what would help; English, lengths in units.
 * csv: a row for each cut: stock, strip, piece, sizes and places in mm.
 * json: an object with boards, bars, missing and remedies, lengths in mm. */
char *rw_cutting_write (const RwCuttingReport *report, RwListFormat format, RwUnits units);
