#include "draw_parts.h"

#include <glib/gi18n-lib.h>
#include <math.h>

double
rw_draft_value (const RwDraft *draft, RwSlot slot)
{
  return draft->result->value[slot];
}

void
rw_draft_set (RwDraft *draft, RwLayer layer, RwSubject subject)
{
  rw_sheet_set (draft->sheet, layer, subject);
}

void
rw_name (RwItem *item, const char *words, int number)
{
  g_autofree char *name = number != 0 ? g_strdup_printf ("%s %d", words, number) : g_strdup (words);

  rw_item_name (item, name);
}

/* Figures */

static gboolean
is_measured (const double *values, int place)
{
  return values != NULL && isfinite (values[place]);
}

/* Angle, bridge and action are each given, unless it is the one solved for. */
static gboolean
is_solved_for (const RwDesign *design, RwParamId id)
{
  switch (id)
    {
    case RW_P_neck_angle:
      return design->neck_solve_for == RW_SOLVE_ANGLE;
    case RW_P_bridge_height:
      return design->neck_solve_for == RW_SOLVE_BRIDGE;
    case RW_P_setup_action:
      return design->neck_solve_for == RW_SOLVE_ACTION;
    default:
      return FALSE;
    }
}

static RwFigure
param_figure (const RwDraft *draft, RwParamId id)
{
  const double *values = draft->measured != NULL ? draft->measured->param : NULL;

  if (is_measured (values, id))
    return RW_FIGURE_MEASURED;
  return is_solved_for (draft->design, id) ? RW_FIGURE_WORKED_OUT : RW_FIGURE_PLANNED;
}

static RwFigure
slot_figure (const RwDraft *draft, RwSlot slot)
{
  const double *values = draft->measured != NULL ? draft->measured->slot : NULL;
  int twin;

  if (is_measured (values, slot))
    return RW_FIGURE_MEASURED;

  /* Where an id is a parameter too, it is one value. */
  twin = rw_slot_dim (slot)->span == RW_SPAN_ONE ? rw_param_find (rw_slot_dim (slot)->id) : -1;
  return twin >= 0 ? param_figure (draft, (RwParamId)twin) : RW_FIGURE_WORKED_OUT;
}

/* A number of the build, to be written in the sheet's units. */
typedef struct
{
  RwSubject subject;
  RwFigure figure;
  double value;
  const char *unit;
} Number;

static Number
param_number (const RwDraft *draft, RwParamId id)
{
  return (Number){
    { (int)id, -1 }, param_figure (draft, id), rw_design_get (draft->design, id), rw_param (id)->unit
  };
}

static Number
slot_number (const RwDraft *draft, RwSlot slot)
{
  return (Number){
    { -1, (int)slot }, slot_figure (draft, slot), rw_draft_value (draft, slot), rw_slot_dim (slot)->unit
  };
}

/* The figure, with words where there are any. */
static char *
number_text (const RwDraft *draft, const Number *number, const char *words)
{
  RwStyle style = draft->sheet->style;
  gboolean is_angle = g_str_equal (number->unit, "deg");
  g_autofree char *digits
      = rw_quantity_figure (number->value, number->unit, style.units, is_angle ? 2 : 1, style.decimal);
  g_autofree char *figure = g_strconcat (digits, is_angle ? "°" : NULL, NULL);
  GString *text = g_string_new (words != NULL ? _(words) : "%s");

  g_string_replace (text, "%s", figure, 1);
  return g_string_free (text, FALSE);
}

static void
add_span (RwDraft *draft, Number number, RwSpan span)
{
  g_autofree char *text = NULL;
  RwItem *item;

  if (!isfinite (number.value))
    return;

  text = number_text (draft, &number, span.words);
  rw_draft_set (draft, RW_LAYER_DIMENSIONS, number.subject);
  item = rw_sheet_dimension (draft->sheet, span.measure, span.from, span.to, span.offset, number.figure,
                             number.value, text);
  item->rank = span.rank;
}

void
rw_span_param (RwDraft *draft, RwParamId id, RwSpan span)
{
  add_span (draft, param_number (draft, id), span);
}

void
rw_span_slot (RwDraft *draft, RwSlot slot, RwSpan span)
{
  add_span (draft, slot_number (draft, slot), span);
}

static void
add_note (RwDraft *draft, Number number, RwNote note)
{
  g_autofree char *text = NULL;
  RwItem *item;

  if (!isfinite (number.value))
    return;

  text = number_text (draft, &number, note.words);
  rw_draft_set (draft, RW_LAYER_DIMENSIONS, number.subject);
  item = rw_sheet_leader (draft->sheet, note.arrow, note.text, number.figure, text);
  item->rank = note.rank;
}

void
rw_span_course (RwDraft *draft, int course, RwSpan span)
{
  const double *values = draft->measured != NULL ? draft->measured->course_thickness : NULL;
  RwFigure figure = is_measured (values, course - 1) ? RW_FIGURE_MEASURED : RW_FIGURE_PLANNED;

  add_span (draft,
            (Number){ RW_SUBJECT_PARAM (rim_course_thickness), figure,
                      draft->design->rim_course_thickness.at[course - 1], "mm" },
            span);
}

void
rw_note_param (RwDraft *draft, RwParamId id, RwNote note)
{
  add_note (draft, param_number (draft, id), note);
}

void
rw_note_slot (RwDraft *draft, RwSlot slot, RwNote note)
{
  add_note (draft, slot_number (draft, slot), note);
}

RwItem *
rw_figure_slot (RwDraft *draft, RwSlot slot, RwPoint at, RwAlign align)
{
  Number number = slot_number (draft, slot);
  g_autofree char *text = number_text (draft, &number, NULL);
  RwItem *item;

  rw_draft_set (draft, RW_LAYER_DIMENSIONS, number.subject);
  item = rw_sheet_text (draft->sheet, at.x, isfinite (number.value) ? at.y : NAN, align, RW_LETTERS_SMALL,
                        text);
  item->figure = number.figure;
  item->rank = 2;
  return item;
}

static void
add_sweep (RwDraft *draft, Number number, RwSweep sweep)
{
  RwItem *item;

  if (!isfinite (number.value))
    return;

  rw_draft_set (draft, RW_LAYER_DIMENSIONS, number.subject);
  item = rw_sheet_angle (draft->sheet, sweep.apex, sweep.radius, sweep.a0, sweep.a1, number.figure,
                         number.value);
  g_free (item->text);
  item->text = number_text (draft, &number, sweep.words);
  item->rank = sweep.rank;
}

void
rw_sweep_param (RwDraft *draft, RwParamId id, RwSweep sweep)
{
  add_sweep (draft, param_number (draft, id), sweep);
}

void
rw_sweep_slot (RwDraft *draft, RwSlot slot, RwSweep sweep)
{
  add_sweep (draft, slot_number (draft, slot), sweep);
}

void
rw_lead_out (RwDraft *draft, RwPoint from, RwPoint to)
{
  rw_draft_set (draft, RW_LAYER_DIMENSIONS, RW_SUBJECT_NONE);
  rw_sheet_line (draft->sheet, RW_PEN_CONSTRUCTION, from.x, from.y, to.x, to.y);
}

void
rw_caption (RwDraft *draft, RwPoint at, double over, const char *words)
{
  RwItem *item;

  rw_draft_set (draft, RW_LAYER_TEXT, RW_SUBJECT_NONE);
  item = rw_sheet_text (draft->sheet, at.x, at.y, RW_ALIGN_MIDDLE, RW_LETTERS_SMALL, words);
  item->offset_mm = over;
  item->rank = 3;
}

RwTint
rw_course_tint (const RwDesign *design, int course)
{
  const RwWoodList *woods = &design->rim_course_wood;
  gboolean dark = FALSE;

  for (int k = 1; k < course && k < woods->count; k++)
    if (woods->at[k] != woods->at[k - 1])
      dark = !dark;
  return dark ? RW_TINT_DARK_WOOD : RW_TINT_LIGHT_WOOD;
}

/* Shapes */

RwItem *
rw_ring (RwDraft *draft, RwPen pen, RwTint tint, RwPoint centre, double outer, double inner)
{
  RwSheet *sheet = draft->sheet;

  rw_path_begin (sheet, pen, tint);
  rw_path_arc (sheet, centre, outer, 0, 2 * G_PI);
  rw_path_close (sheet);
  rw_path_move (sheet, centre.x + inner, centre.y);
  rw_path_arc (sheet, centre, inner, 2 * G_PI, 0);
  rw_path_close (sheet);
  return rw_path_end (sheet);
}

void
rw_cross (RwDraft *draft, RwPoint centre, double reach)
{
  rw_sheet_line (draft->sheet, RW_PEN_CENTRE, centre.x - reach, centre.y, centre.x + reach, centre.y);
  rw_sheet_line (draft->sheet, RW_PEN_CENTRE, centre.x, centre.y - reach, centre.x, centre.y + reach);
}

/* Crossings of the line y = lean x + level with a polygon, as x, in rising order. */
static GArray *
crossings (const RwPoint *points, int count, int lean, double level)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (double));

  for (int i = 0; i < count; i++)
    {
      RwPoint a = points[i], b = points[(i + 1) % count];
      double da = a.y - lean * a.x - level, db = b.y - lean * b.x - level;

      if ((da < 0) != (db < 0))
        {
          double x = a.x + (b.x - a.x) * da / (da - db);
          guint at = found->len;

          while (at > 0 && g_array_index (found, double, at - 1) > x)
            at--;
          g_array_insert_val (found, at, x);
        }
    }
  return found;
}

/* More strokes than this no part has. */
#define HATCH_MOST 1000

void
rw_hatch (RwDraft *draft, const RwPoint *points, int count, double step, int lean)
{
  double low = HUGE_VAL, high = -HUGE_VAL;

  for (int i = 0; i < count; i++)
    {
      low = fmin (low, points[i].y - lean * points[i].x);
      high = fmax (high, points[i].y - lean * points[i].x);
    }
  if (!(high > low && high - low < HATCH_MOST * step))
    return;

  int strokes = (int) ceil ((high - low) / (step * G_SQRT2) - 0.5);

  rw_path_begin (draft->sheet, RW_PEN_GRAIN, RW_TINT_NONE);
  for (int k = 0; k < strokes; k++)
    {
      double level = low + (k + 0.5) * step * G_SQRT2;
      g_autoptr (GArray) x = crossings (points, count, lean, level);

      for (guint i = 0; i + 1 < x->len; i += 2)
        {
          double from = g_array_index (x, double, i), to = g_array_index (x, double, i + 1);

          rw_path_move (draft->sheet, from, lean * from + level);
          rw_path_line (draft->sheet, to, lean * to + level);
        }
    }
  rw_path_end (draft->sheet);
}
