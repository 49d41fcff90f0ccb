#include "paint_cairo.h"

/* Dashes of ISO 128-2, in widths d of the line (recalled, not read): dash 12 d, long dash 24 d, gap 3 d,
 * dot 0.5 d. */
#define DASHED(d) { 12 * (d), 3 * (d) }
#define DOTTED(d) { 24 * (d), 3 * (d), 0.5 * (d), 3 * (d) }
#define DOUBLE_DOTTED(d) { 24 * (d), 3 * (d), 0.5 * (d), 3 * (d), 0.5 * (d), 3 * (d) }

/* Grain stays half behind all other lines, whatever wood it is on. */
static const RwPenStyle styles[RW_PEN_COUNT] = {
  [RW_PEN_OUTLINE]      = { RW_WIDE_MM, FALSE, 1, { 0 }, 0 },
  [RW_PEN_EDGE]         = { RW_NARROW_MM, FALSE, 1, { 0 }, 0 },
  [RW_PEN_HIDDEN]       = { RW_NARROW_MM, FALSE, 1, DASHED (RW_NARROW_MM), 2 },
  [RW_PEN_CENTRE]       = { RW_NARROW_MM, TRUE, 1, DOTTED (RW_NARROW_MM), 4 },
  [RW_PEN_PHANTOM]      = { RW_NARROW_MM, TRUE, 1, DOUBLE_DOTTED (RW_NARROW_MM), 6 },
  [RW_PEN_CUT]          = { RW_WIDE_MM, FALSE, 1, DOTTED (RW_WIDE_MM), 4 },
  [RW_PEN_CONSTRUCTION] = { RW_NARROW_MM, TRUE, 1, { 0 }, 0 },
  [RW_PEN_GRAIN]        = { RW_NARROW_MM, TRUE, 0.4, { 0 }, 0 },
};

const RwPenStyle *
rw_pen_style (RwPen pen)
{
  return &styles[pen];
}
