#include "paper_column.h"
#include "paper_missing.h"
#include "paper_parts.h"

#include "table/material.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* What to buy or find: amounts worked out, spares included and said.  Spares are common practice, no source.
 */

#define LINE 5.4

typedef struct
{
  RwColumn *column;
  const RwPaperJob *job;
  const RwDesign *design;
} List;

static double
value (const List *list, RwSlot slot)
{
  return list->job->result->value[slot];
}

/* Stock is bought: lengths are rounded up, to whole millimetres or eighths of an inch. */
static char *
at_least (const List *list, double length)
{
  RwUnits units = list->job->style.units;
  double step = units == RW_UNITS_MM ? 1 : RW_MM_PER_INCH / 8;
  double up = ceil (length / step - 1e-9) * step;
  g_autofree char *figure = rw_quantity_write (up, "mm", units, 0, list->job->style.decimal);

  return g_strconcat (figure, RW_NO_BREAK, rw_quantity_unit ("mm", units), NULL);
}

/* What is bought or drilled to a size: a fraction where that is near enough, else thousandths. */
static char *
exact (const List *list, double length)
{
  RwUnits units = list->job->style.units;
  gboolean far = fabs (rw_fraction_error (length, units)) > RW_FRACTION_ERROR_TOLD;
  g_autofree char *figure
      = far ? rw_quantity_write (length, "mm", RW_UNITS_INCH, 1, list->job->style.decimal)
            : rw_quantity_write (length, "mm", units, 2, list->job->style.decimal);

  return g_strconcat (figure, RW_NO_BREAK, rw_quantity_unit ("mm", units), NULL);
}

/* A line with a box to tick. */
G_GNUC_PRINTF (3, 4)
static void
item (const List *list, const char *what, const char *format, ...)
{
  g_autofree char *words = NULL;
  RwColumn *column = list->column;
  va_list args;

  va_start (args, format);
  words = g_strdup_vprintf (format, args);
  va_end (args);
  rw_column_room (column, LINE);
  if (column->page == list->job->page)
    rw_sheet_box (column->sheet, RW_PEN_CONSTRUCTION, RW_TINT_NONE, 0, column->y, 2.5, column->y + 2.5);
  rw_column_text (column, 6, RW_ALIGN_START, what);
  rw_column_words (column, list->job->width * 0.32, words);
  rw_column_down (column, 0.8);
}

/* ---- wood ---- */

static void
segment_wood (const List *list)
{
  const RwDesign *design = list->design;
  double width
      = design->rim_strip_width > 0 ? design->rim_strip_width : value (list, RW_RIM_SEGMENT_MIN_WIDTH);
  g_autofree char *wide = at_least (list, width),
                  *length = at_least (list, value (list, RW_RIM_COURSE_STRIP) * 1.1);

  for (int k = 1; k <= design->rim_course_thickness.count; k++)
    {
      int wood = design->rim_course_wood.at[MIN (k, design->rim_course_wood.count) - 1];
      g_autofree char *thick = at_least (list, value (list, RW_RIM_COURSE_ROUGH + k));

      item (list, k == 1 ? C_("of wood", "Rim strip") : "",
            _("course %d: %s, %s thick, %s wide, %s long with a tenth to spare"), k, _(rw_woods[wood].label),
            thick, wide, length);
    }
}

static void
stave_wood (const List *list)
{
  const RwDesign *design = list->design;
  double thick
      = design->rim_strip_width > 0 ? design->rim_strip_width : value (list, RW_RIM_SEGMENT_MIN_WIDTH);
  double each = value (list, RW_RIM_STAVE_LENGTH) + design->shop_kerf;
  g_autofree char *deep = at_least (list, thick),
                  *wide = at_least (list, value (list, RW_RIM_SEGMENT_OUTER_EDGE));
  g_autofree char *length = at_least (list, (design->rim_segments + 2) * each);

  item (list, _("Stave strip"), _("%s: %s thick, %s wide before bevelling, %s long, two staves to spare"),
        _(rw_woods[design->rim_course_wood.at[0]].label), deep, wide, length);
}

static void
ply_wood (const List *list)
{
  const RwDesign *design = list->design;
  int count = (int)value (list, RW_RIM_PLY_COUNT);
  g_autofree char *thick = exact (list, design->rim_ply_thickness);
  g_autofree char *wide = at_least (list, design->rim_height + 2 * design->rim_turning_allowance);
  g_autofree char *length = at_least (list, value (list, RW_RIM_PLY_LENGTH + count));

  item (list, _("Plies"), _("%s: %d of %s, %s wide, up to %s long, one to spare"),
        _(rw_woods[design->rim_course_wood.at[0]].label), count + 1, thick, wide, length);
}

static void
neck_wood (const List *list)
{
  const RwDesign *design = list->design;
  g_autofree char *length = at_least (list, value (list, RW_NECK_BLANK_LENGTH)),
                  *wide = at_least (list, value (list, RW_NECK_BLANK_WIDTH));
  g_autofree char *deep = at_least (list, value (list, RW_NECK_BLANK_DEPTH)),
                  *board = at_least (list, value (list, RW_NECK_BOARD_LENGTH) + 10);
  g_autofree char *across = at_least (list, value (list, RW_NECK_WIDTH_AT_END) + 4),
                  *thick = at_least (list, design->fretboard_thickness + 1);

  item (list, _("Neck blank"), _("%s: %s by %s by %s in one piece, or glued up to it"),
        _(rw_woods[design->neck_wood].label), length, wide, deep);
  item (list, _("Fretboard"), _("%s: %s by %s, %s thick before planing"),
        _(rw_woods[design->neck_board_wood].label), board, across, thick);
  if (design->headstock_overlay > 0)
    {
      g_autofree char *l = at_least (list, design->headstock_length + 10),
                      *w = at_least (list, design->headstock_width + 4);
      g_autofree char *t = exact (list, design->headstock_overlay);

      item (list, _("Headstock overlay"), _("%s by %s, %s thick"), l, w, t);
    }
}

/* Along both edges and across the end. */
static void
binding (const List *list)
{
  const RwDesign *design = list->design;
  double length = 2 * value (list, RW_NECK_BOARD_LENGTH) + value (list, RW_NECK_WIDTH_AT_END);
  g_autofree char *thick = exact (list, design->fretboard_binding),
                  *high = exact (list, design->fretboard_thickness);
  g_autofree char *long_enough = at_least (list, length * 1.1);

  if (design->fretboard_binding > 0)
    item (list, _("Binding"), _("%s thick, %s high at least, %s in all with a tenth to spare"), thick, high,
          long_enough);
}

static void
wood (const List *list)
{
  rw_column_heading (list->column, 2 * LINE, _("Wood"));
  if (list->design->rim_construction == RW_RIM_SEGMENTS)
    segment_wood (list);
  else if (list->design->rim_construction == RW_RIM_STAVES)
    stave_wood (list);
  else
    ply_wood (list);
  neck_wood (list);
  binding (list);
}

/* ---- metal ---- */

#define SPARE_HOOKS 2

static void
hooks (const List *list)
{
  const RwDesign *design = list->design;
  int count = (int)design->hooks_count;
  double each = value (list, RW_HOOKS_CUT) + design->shop_rod_kerf;
  g_autofree char *rod = exact (list, design->hooks_rod),
                  *length = at_least (list, (count + SPARE_HOOKS) * each);
  g_autofree char *drill = exact (list, value (list, RW_SHOES_TAP_DRILL)),
                  *wall = exact (list, design->rim_wall);

  item (list, _("Hook rod"), _("%s diameter, %s in all, two hooks to spare; and the %s die"), rod, length,
        rw_threads[design->hooks_thread].id);
  item (list, _("Hook nuts"), _("%d of %s, two to spare"), count + SPARE_HOOKS,
        rw_threads[design->hooks_thread].id);
  item (list, _("Shoes"), _("%d, two to spare, or bar to cut them from; %s tap and its drill, %s"),
        count + SPARE_HOOKS, rw_threads[design->shoes_thread].id, drill);
  item (list, _("Shoe bolts and washers"),
        _("%d of %s: through a wall of %s and into the shoe; measure before buying"), count + SPARE_HOOKS,
        rw_threads[design->shoes_thread].id, wall);
}

static void
hoop (const List *list)
{
  const RwDesign *design = list->design;
  g_autofree char *thick = exact (list, design->hoop_thickness), *high = exact (list, design->hoop_height);
  g_autofree char *length = at_least (list, value (list, RW_HOOP_STRIP) * 1.05);

  item (list, _("Hoop bar"),
        _("%s: %s by %s, %s long with a twentieth to spare, and a piece for a test bend"),
        _(rw_metals[design->hoop_material].label), thick, high, length);
}

/* So much is left past the rim at either end, for nut and washer at the tail and the hanger in the heel. */
#define ROD_PAST 30.0

static void
joint (const List *list)
{
  const RwDesign *design = list->design;

  if (design->joint_kind == RW_JOINT_RODS)
    {
      g_autofree char *size = exact (list, design->joint_rod_diameter),
                      *length = at_least (list, design->rim_outer_diameter + 2 * ROD_PAST);

      item (list, _("Rods across the pot"), _("%d of %s, %s long at least, with nuts and washers"),
            (int)design->joint_rod_count, size, length);
    }
  else
    {
      g_autofree char *size = exact (list, design->joint_stick_section),
                      *length = at_least (list, design->rim_outer_diameter + 2 * ROD_PAST);

      item (list, _("Stick"), _("%s square, %s long, straight in the grain"), size, length);
    }
  if (design->neck_rod_present == RW_YES)
    {
      double run = list->job->result->side.nut_to_rim - design->neck_rod_end - design->neck_rod_start;
      g_autofree char *channel = exact (list, run), *wide = exact (list, design->neck_rod_width),
                      *deep = exact (list, design->neck_rod_depth);

      item (list, _("Truss rod"),
            _("to lie in a channel %s long, %s wide, %s deep; in hand before the channel is cut"), channel,
            wide, deep);
    }
}

static void
metal (const List *list)
{
  rw_column_heading (list->column, 2 * LINE, _("Metal"));
  hooks (list);
  hoop (list);
  joint (list);
  if (list->design->frets_count > 0.5)
    {
      g_autofree char *length = at_least (list, value (list, RW_FRETS_WIRE_TOTAL) * 1.1),
                      *tang = exact (list, list->design->frets_tang_depth);

      item (list, _("Fret wire"), _("%s with a tenth to spare, tang %s deep"), length, tang);
    }
}

/* ---- bought parts ---- */

static void
strings (const List *list)
{
  const RwStringSet *set = &list->design->strings_set;

  for (int i = 0; i < set->count; i++)
    {
      g_autofree char *gauge
          = rw_quantity_write (set->at[i].outer_mm, "mm", RW_UNITS_MM, 3, list->job->style.decimal);
      g_autofree char *inch
          = rw_quantity_write (set->at[i].outer_mm, "mm", RW_UNITS_INCH, 1, list->job->style.decimal);

      if (set->at[i].core_mm > 0)
        item (list, i == 0 ? _("Strings") : "", _("string %d, %s: %s mm (%s in), wound"), i + 1,
              set->at[i].note, gauge, inch);
      else
        item (list, i == 0 ? _("Strings") : "", _("string %d, %s: %s mm (%s in), plain"), i + 1,
              set->at[i].note, gauge, inch);
    }
}

static void
parts (const List *list)
{
  const RwDesign *design = list->design;
  const RwPlan *plan = &list->job->result->plan;
  g_autofree char *head = exact (list, design->head_nominal),
                  *hole = exact (list, design->headstock_post_hole);
  g_autofree char *bridge = exact (list, value (list, RW_BRIDGE_HEIGHT));
  gboolean peg = plan->has_short && design->fifth_route == RW_ROUTE_SIDE_PEG;

  rw_column_heading (list->column, 2 * LINE, _("Bought parts"));
  item (list, _("Head"), _("%s; measure the band's bore before the rim is turned"), head);
  item (list, _("Tuners"), _("%d, post hole %s"), peg ? plan->full : plan->strings, hole);
  if (peg)
    item (list, _("Side peg"), _("1, for the short string"));
  item (list, _("Bridge"), _("blank at least %s high"), bridge);
  item (list, _("Nut, tailpiece"), _("1 each"));
  strings (list);
  if (isfinite (value (list, RW_FINISH_FLAKE)))
    item (list, _("Shellac flake"), _("%.0f g in %.0f ml of spirit"),
          ceil (value (list, RW_FINISH_FLAKE)), design->shop_shellac_volume);
}

RwSheet *
rw_paper_shopping (const RwPaperJob *job)
{
  RwColumn column = rw_column_begin (job, _("Shopping list"));
  const List list = { &column, job, &job->result->used };

  rw_paper_missing (&column);
  wood (&list);
  metal (&list);
  parts (&list);
  return rw_column_end (&column);
}
