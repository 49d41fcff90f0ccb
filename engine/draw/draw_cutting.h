/* Pictures of a cutting plan: each board and bar with its cuts in order, what is left, and what is missing. */
#pragma once

#include "sheet/sheet.h"
#include "stock/shortage.h"

/* rw_draw_cutting: a page of the plan, made for its room like lettering: 1 mm of the sheet is 1 mm of paper.
 *
 * Given     cutting, design  the plan, and the build that it is for
 *           width, height    mm; x from 0 to width, y from 0 down to -height.  height 0: all on one page
 *           page             from 0
 * Returned  a new sheet, or NULL: no such page.
 *
 * Boards are drawn to the width of the page, all alike; across the grain at a larger scale, so that strips can be told
 * apart.  Bars are as long as they are and no more than a band across.
 */
RwSheet *rw_draw_cutting (const RwCutting *cutting, const RwDesign *design, RwStyle style, double width, double height,
                          int page);

/* How far down the sheet goes, mm: for a page of endless height. */
double rw_cutting_height (const RwSheet *sheet);
