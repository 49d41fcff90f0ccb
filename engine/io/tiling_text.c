#include "tiling.h"

#include <math.h>

#define AIR 0.6      /* between lettering and a band, or other lettering */
#define LONGEST 45.0 /* mm: what is longer is a line of notes and keeps to its neighbours */

/* A strip in which pages overlap: along x between low and high, or along y. */
typedef struct
{
  gboolean level;
  double   low, high;
} Band;

typedef struct
{
  RwLayout *layout;
  GArray   *bands;
} Settling;

static GArray *
find_bands (const RwTiling *tiling)
{
  GArray *bands = g_array_new (FALSE, FALSE, sizeof (Band));

  for (int column = 1; column < tiling->columns; column++)
    {
      Band band = { FALSE, tiling->left[column], tiling->left[column] + tiling->overlap };

      g_array_append_val (bands, band);
    }
  for (int row = 1; row < tiling->rows; row++)
    {
      Band band = { TRUE, tiling->top[row] - tiling->overlap, tiling->top[row] };

      g_array_append_val (bands, band);
    }
  return bands;
}

static gboolean
is_in (const Band *band, const RwBox *box)
{
  return band->level ? box->y0 < band->high && box->y1 > band->low : box->x0 < band->high && box->x1 > band->low;
}

static const Band *
band_of (const Settling *settling, const RwBox *box)
{
  for (guint i = 0; i < settling->bands->len; i++)
    if (is_in (&g_array_index (settling->bands, Band, i), box))
      return &g_array_index (settling->bands, Band, i);
  return NULL;
}

static gboolean
touch (const RwBox *a, const RwBox *b)
{
  return a->x0 < b->x1 + AIR && b->x0 < a->x1 + AIR && a->y0 < b->y1 + AIR && b->y0 < a->y1 + AIR;
}

static const RwItem *
item_of (const Settling *settling, int item)
{
  return &g_array_index (settling->layout->sheet->items, RwItem, item);
}

/* Of other lettering, and of the lines of other dimensions. */
static gboolean
is_free (const Settling *settling, guint number, const RwBox *box)
{
  const GArray *texts = settling->layout->texts, *marks = settling->layout->marks;
  int item = g_array_index (texts, RwPlacedText, number).item;

  for (guint i = 0; i < texts->len; i++)
    if (i != number && touch (&g_array_index (texts, RwPlacedText, i).box, box))
      return FALSE;
  for (guint i = 0; i < marks->len; i++)
    {
      const RwPlacedMark *mark = &g_array_index (marks, RwPlacedMark, i);
      const RwPoint *p = mark->p;
      RwBox line = { MIN (p[0].x, p[1].x), MIN (p[0].y, p[1].y), MAX (p[0].x, p[1].x), MAX (p[0].y, p[1].y) };

      if (mark->item != item && (mark->kind == RW_MARK_LINE || mark->kind == RW_MARK_EXTENSION)
          && touch (&line, box))
        return FALSE;
    }
  return TRUE;
}

/* A figure stays over its dimension line. */
static gboolean
stays_on_line (const Settling *settling, const RwPlacedText *text, const RwBox *box, gboolean level)
{
  for (guint i = 0; i < settling->layout->marks->len; i++)
    {
      const RwPlacedMark *mark = &g_array_index (settling->layout->marks, RwPlacedMark, i);
      const RwPoint *p = mark->p;

      if (mark->item != text->item || mark->kind != RW_MARK_LINE)
        continue;
      if (level ? MIN (p[0].x, p[1].x) <= box->x0 && MAX (p[0].x, p[1].x) >= box->x1
                : MIN (p[0].y, p[1].y) <= box->y0 && MAX (p[0].y, p[1].y) >= box->y1)
        return TRUE;
    }
  return FALSE;
}

/* Texts of the drawing and leaders go either way; a figure goes along its line. */
static gboolean
may_move (const Settling *settling, const RwPlacedText *text, const RwBox *box, double dx, double dy)
{
  const RwItem *item = item_of (settling, text->item);

  if (item->kind == RW_ITEM_TEXT || item->kind == RW_ITEM_LEADER)
    return TRUE;
  if (item->kind != RW_ITEM_DIMENSION || item->measure == RW_MEASURE_ANGLE)
    return FALSE;

  gboolean level = fabs (sin (text->turn)) < 1e-6, upright = fabs (cos (text->turn)) < 1e-6;

  return (level && dy == 0 && stays_on_line (settling, text, box, TRUE))
         || (upright && dx == 0 && stays_on_line (settling, text, box, FALSE));
}

/* The ways out of a band: 0, back, on. */
static double
way_out (const Band *band, const RwBox *box, int way)
{
  double low = band->level ? box->y0 : box->x0, high = band->level ? box->y1 : box->x1;

  return way == 0 ? 0 : way == 1 ? band->low - AIR - high : band->high + AIR - low;
}

static const Band *
first_band (const Settling *settling, const RwBox *box, gboolean level)
{
  for (guint i = 0; i < settling->bands->len; i++)
    {
      const Band *band = &g_array_index (settling->bands, Band, i);

      if (band->level == level && is_in (band, box))
        return band;
    }
  return NULL;
}

/* The landing goes with its words; the line to it keeps its tip, and the arrow head turns. */
static void
bring_leader (Settling *settling, int item, double dx, double dy)
{
  RwPoint elbow = { 0, 0 };
  int lines = 0;

  for (guint i = 0; i < settling->layout->marks->len; i++)
    {
      RwPlacedMark *mark = &g_array_index (settling->layout->marks, RwPlacedMark, i);
      RwPoint *p = mark->p;

      if (mark->item != item)
        continue;
      if (mark->kind == RW_MARK_LINE)
        {
          if (lines++ > 0) /* the first comes from the tip */
            p[0] = (RwPoint){ p[0].x + dx, p[0].y + dy };
          p[1] = (RwPoint){ p[1].x + dx, p[1].y + dy };
          elbow = lines == 1 ? p[1] : elbow;
        }
      if (mark->kind == RW_MARK_HEAD)
        {
          double length = hypot ((p[1].x + p[2].x) / 2 - p[0].x, (p[1].y + p[2].y) / 2 - p[0].y);
          double half = hypot (p[1].x - p[2].x, p[1].y - p[2].y) / 2, away = hypot (elbow.x - p[0].x, elbow.y - p[0].y);
          double ux = (elbow.x - p[0].x) / away, uy = (elbow.y - p[0].y) / away;

          p[1] = (RwPoint){ p[0].x + ux * length - uy * half, p[0].y + uy * length + ux * half };
          p[2] = (RwPoint){ p[0].x + ux * length + uy * half, p[0].y + uy * length - ux * half };
        }
    }
}

static RwBox
moved (const RwBox *box, double dx, double dy)
{
  return (RwBox){ box->x0 + dx, box->y0 + dy, box->x1 + dx, box->y1 + dy };
}

/* The shortest way out of all bands, if there is one. */
static void
settle_text (Settling *settling, guint number)
{
  RwPlacedText *text = &g_array_index (settling->layout->texts, RwPlacedText, number);
  const Band *column = first_band (settling, &text->box, FALSE), *row = first_band (settling, &text->box, TRUE);
  double least = HUGE_VAL, best_x = 0, best_y = 0;

  if (text->width > LONGEST)
    return;
  for (int way_x = 0; way_x < (column != NULL ? 3 : 1); way_x++)
    for (int way_y = 0; way_y < (row != NULL ? 3 : 1); way_y++)
      {
        double dx = column != NULL ? way_out (column, &text->box, way_x) : 0;
        double dy = row != NULL ? way_out (row, &text->box, way_y) : 0;
        RwBox box = moved (&text->box, dx, dy);

        if (hypot (dx, dy) >= least || band_of (settling, &box) != NULL || !is_free (settling, number, &box)
            || !may_move (settling, text, &box, dx, dy))
          continue;
        least = hypot (dx, dy);
        best_x = dx;
        best_y = dy;
      }
  text->at.x += best_x;
  text->at.y += best_y;
  text->box = moved (&text->box, best_x, best_y);
  if (item_of (settling, text->item)->kind == RW_ITEM_LEADER)
    bring_leader (settling, text->item, best_x, best_y);
}

RwLayout *
rw_tiling_settle (const RwTiling *tiling, const RwLayout *layout, int *lost)
{
  RwLayout *settled = g_new (RwLayout, 1);
  g_autoptr (GArray) bands = find_bands (tiling);
  Settling settling = { settled, bands };

  *settled = *layout;
  settled->texts = g_array_copy (layout->texts);
  settled->marks = g_array_copy (layout->marks);
  *lost = 0;
  for (guint i = 0; i < settled->texts->len; i++)
    {
      const RwPlacedText *text = &g_array_index (settled->texts, RwPlacedText, i);

      if (band_of (&settling, &text->box) == NULL)
        continue;
      settle_text (&settling, i);
      *lost += band_of (&settling, &text->box) != NULL;
    }
  return settled;
}
