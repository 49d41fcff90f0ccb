/* Walks a path of a sheet as straight pieces, for whatever needs to know where its lines run. */
#pragma once

#include "sheet.h"

typedef void (*RwTraceFunc) (RwPoint a, RwPoint b, gpointer data);

/* tolerance: how far a piece may stray from an arc or curve, sheet mm.  With as_area, runs left open are
 * closed, as a fill closes them. */
void rw_trace (const RwSheet *sheet,
               const RwItem  *item,
               double         tolerance,
               gboolean       as_area,
               RwTraceFunc    func,
               gpointer       data);
