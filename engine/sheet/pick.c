#include "layout.h"
#include "trace.h"

#include <math.h>

typedef struct
{
  RwPoint at;
  double  distance; /* to the nearest piece */
  int     winding;
} Pick;

static double
distance_to_piece (RwPoint a, RwPoint b, RwPoint p)
{
  double dx = b.x - a.x, dy = b.y - a.y;
  double square = dx * dx + dy * dy;
  double t = square > 0 ? ((p.x - a.x) * dx + (p.y - a.y) * dy) / square : 0;

  t = CLAMP (t, 0, 1);
  return hypot (a.x + t * dx - p.x, a.y + t * dy - p.y);
}

static void
pick_line (RwPoint a, RwPoint b, gpointer data)
{
  Pick *pick = data;

  pick->distance = MIN (pick->distance, distance_to_piece (a, b, pick->at));
}

/* Counts how often a ray to the right is crossed, upwards less downwards: not 0 is inside, as cairo fills. */
static void
pick_area (RwPoint a, RwPoint b, gpointer data)
{
  Pick *pick = data;
  double side = (b.x - a.x) * (pick->at.y - a.y) - (pick->at.x - a.x) * (b.y - a.y);

  if (a.y <= pick->at.y && b.y > pick->at.y && side > 0)
    pick->winding++;
  else if (b.y <= pick->at.y && a.y > pick->at.y && side < 0)
    pick->winding--;
}

static gboolean
is_hit (const RwSheet *sheet, const RwItem *item, RwPoint at, double reach)
{
  Pick pick = { .at = at, .distance = HUGE_VAL };
  double tolerance = reach / 4;

  if (item->kind != RW_ITEM_PATH || item->pen == RW_PEN_GRAIN)
    return FALSE;

  if (item->pen != RW_PEN_NONE)
    rw_trace (sheet, item, tolerance, FALSE, pick_line, &pick);
  if (pick.distance <= reach)
    return TRUE;

  if (item->tint != RW_TINT_NONE)
    rw_trace (sheet, item, tolerance, TRUE, pick_area, &pick);
  return pick.winding != 0;
}

int
rw_sheet_pick (const RwSheet *sheet, double x, double y, double reach)
{
  for (int i = (int) sheet->items->len - 1; i >= 0; i--)
    if (is_hit (sheet, &g_array_index (sheet->items, RwItem, i), (RwPoint){ x, y }, reach))
      return i;
  return -1;
}

int
rw_layout_text_at (const RwLayout *layout, double x, double y, double reach)
{
  for (int i = (int) layout->texts->len - 1; i >= 0; i--)
    {
      const RwPlacedText *text = &g_array_index (layout->texts, RwPlacedText, i);
      const RwBox *box = &text->box;

      if (x >= box->x0 - reach && x <= box->x1 + reach && y >= box->y0 - reach && y <= box->y1 + reach)
        return i;
    }
  return -1;
}
