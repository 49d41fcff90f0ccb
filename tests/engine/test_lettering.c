/* Lettering of real drawings: over random builds, every view, at three zooms, nothing that can be read runs over
 * anything else.
 *
 * What counts: the rectangle from the base line to the top of the capitals, as wide as the text, turned as the text
 * is.  No two of them may touch each other, nor may a wide line of the drawing or any line of a dimension or leader
 * run through one.  Narrow lines may: where there is no other place, drawing practice lets a figure cross them. */
#include "draw/drawing.h"
#include "sheet/layout.h"
#include "sheet/trace.h"

#include <math.h>

#include "random_design.h"

/* Paper mm between places asked along a line: a fifth of the height of letters. */
#define STRIDE 0.5
#define BUILDS 25

/* Paper widths of a view, mm: a small pane, a window, a large screen. */
static const double widths[] = { 120, 300, 700 };

static RwPoint
corner (const RwPlacedText *text, int i)
{
  double along = i == 1 || i == 2 ? text->width : 0, up = i >= 2 ? text->size : 0;
  double c = cos (text->turn), s = sin (text->turn);

  return (RwPoint){ text->at.x + along * c - up * s, text->at.y + along * s + up * c };
}

/* How far a rectangle reaches along a direction: from low to high. */
static void
reach (const RwPlacedText *text, RwPoint way, double *low, double *high)
{
  *low = HUGE_VAL;
  *high = -HUGE_VAL;
  for (int i = 0; i < 4; i++)
    {
      RwPoint p = corner (text, i);
      double at = p.x * way.x + p.y * way.y;

      *low = MIN (*low, at);
      *high = MAX (*high, at);
    }
}

/* Two rectangles are apart where some side of one of them parts them. */
static gboolean
are_apart (const RwPlacedText *a, const RwPlacedText *b)
{
  const double turns[] = { a->turn, a->turn + G_PI_2, b->turn, b->turn + G_PI_2 };

  for (int i = 0; i < 4; i++)
    {
      RwPoint way = { cos (turns[i]), sin (turns[i]) };
      double low[2], high[2];

      reach (a, way, &low[0], &high[0]);
      reach (b, way, &low[1], &high[1]);
      if (high[0] < low[1] || high[1] < low[0])
        return TRUE;
    }
  return FALSE;
}

static const RwPlacedText *
text_at (const RwLayout *layout, guint i)
{
  return &g_array_index (layout->texts, RwPlacedText, i);
}

typedef struct
{
  const RwLayout *layout;
  double          scale; /* from the line's millimetres to those of paper */
  const char     *what;
} Walk;

static void
ask_place (const Walk *walk, RwPoint p)
{
  for (guint i = 0; i < walk->layout->texts->len; i++)
    {
      const RwPlacedText *text = text_at (walk->layout, i);
      double x = p.x - text->at.x, y = p.y - text->at.y;
      double along = x * cos (text->turn) + y * sin (text->turn);
      double up = y * cos (text->turn) - x * sin (text->turn);

      if (along > 0 && along < text->width && up > 0 && up < text->size)
        g_error ("%s: %s runs through “%s”", walk->layout->sheet->title, walk->what, text->text);
    }
}

static void
walk_piece (RwPoint a, RwPoint b, gpointer data)
{
  const Walk *walk = data;
  double length = hypot (b.x - a.x, b.y - a.y) * walk->scale;
  int steps = 1 + (int) (length / STRIDE);

  for (int i = 0; i <= steps; i++)
    ask_place (walk, (RwPoint){ walk->scale * (a.x + (b.x - a.x) * i / steps),
                                walk->scale * (a.y + (b.y - a.y) * i / steps) });
}

static void
assert_lines_clear (const RwLayout *layout)
{
  const GArray *items = layout->sheet->items;

  for (guint i = 0; i < items->len; i++)
    {
      const RwItem *item = &g_array_index (items, RwItem, i);
      Walk walk = { layout, layout->scale, item->name != NULL ? item->name : "a wide line" };

      if (item->kind == RW_ITEM_PATH && (item->pen == RW_PEN_OUTLINE || item->pen == RW_PEN_CUT))
        rw_trace (layout->sheet, item, STRIDE / 2 / layout->scale, FALSE, walk_piece, &walk);
    }
  for (guint i = 0; i < layout->marks->len; i++)
    {
      const RwPlacedMark *mark = &g_array_index (layout->marks, RwPlacedMark, i);
      Walk walk = { layout, 1, "the line of a dimension" };

      if (mark->kind == RW_MARK_LINE || mark->kind == RW_MARK_EXTENSION)
        walk_piece (mark->p[0], mark->p[1], &walk);
    }
}

static void
assert_texts_apart (const RwLayout *layout)
{
  for (guint i = 0; i < layout->texts->len; i++)
    for (guint k = 0; k < i; k++)
      if (!are_apart (text_at (layout, i), text_at (layout, k)))
        g_error ("%s: “%s” and “%s” run over each other", layout->sheet->title, text_at (layout, i)->text,
                 text_at (layout, k)->text);
}

/* How much of a view's lettering finds room, by width of paper. */
typedef struct
{
  guint asked[G_N_ELEMENTS (widths)], placed[G_N_ELEMENTS (widths)];
} Tally;

static void
check_view (const RwResult *result, RwView view, RwStyle style, Tally *tally)
{
  g_autoptr (RwSheet) sheet = rw_draw (view, result, NULL, style);
  RwBox box = rw_sheet_extent (sheet);
  guint asked = 0;

  for (guint i = 0; i < sheet->items->len; i++)
    asked += g_array_index (sheet->items, RwItem, i).kind != RW_ITEM_PATH;
  for (guint i = 0; i < G_N_ELEMENTS (widths); i++)
    {
      g_autoptr (RwLayout) layout = rw_layout_new (sheet, widths[i] / MAX (box.x1 - box.x0, 1), 0);

      assert_texts_apart (layout);
      assert_lines_clear (layout);
      tally->asked[i] += asked;
      tally->placed[i] += layout->texts->len;
    }
}

static void
check_build (const RwDesign *design, Tally *tally)
{
  static const RwUnits units[] = { RW_UNITS_MM, RW_UNITS_FRACTION };
  g_autofree RwResult *result = g_new (RwResult, 1);

  rw_solve (design, NULL, result);
  for (int view = 0; view < RW_VIEW_COUNT; view++)
    for (guint i = 0; i < G_N_ELEMENTS (units); i++)
      check_view (result, (RwView) view, (RwStyle){ units[i], '.' }, tally);
}

/* Builds that make sense: and most of their lettering is there, the more the larger the view. */
static void
test_near (void)
{
  Tally tally = { { 0 }, { 0 } };

  for (int i = 0; i < BUILDS; i++)
    {
      RwDesign design;

      random_design_near (&design, i);
      design.build_handed = i % 2 != 0 ? RW_HANDED_LEFT : RW_HANDED_RIGHT;
      check_build (&design, &tally);
    }
  for (guint i = 0; i < G_N_ELEMENTS (widths); i++)
    g_test_message ("%g mm: %u of %u", widths[i], tally.placed[i], tally.asked[i]);
  g_assert_cmpfloat (tally.placed[1], >, 0.85 * tally.asked[1]);
  g_assert_cmpfloat (tally.placed[2], >, 0.95 * tally.asked[2]);
  g_assert_cmpuint (tally.placed[0], <, tally.placed[2]);
}

/* Builds that make none. */
static void
test_any (void)
{
  Tally tally = { { 0 }, { 0 } };

  for (int i = 0; i < BUILDS; i++)
    {
      RwDesign design;

      random_design (&design);
      check_build (&design, &tally);
    }
  g_assert_cmpuint (tally.placed[1], >, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  g_test_add_func ("/lettering/near", test_near);
  g_test_add_func ("/lettering/any", test_any);
  return g_test_run ();
}
