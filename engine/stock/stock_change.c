/* The changes that are tried, by what is missing. */
#include "stock_change.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#include "model/rim.h"
#include "table/material.h"

#define FAR_SEGMENTS 6
#define NECK_STRIPS 5
#define BOARD_STRIPS 3

typedef struct
{
  const RwCutting *cutting;
  const RwDesign  *design;
  GPtrArray       *choices;
} Changes;

static void
free_change (gpointer data)
{
  rw_remedy_free (data);
}

static GPtrArray *
new_choice (void)
{
  return g_ptr_array_new_with_free_func (free_change);
}

/* Adds a change to a choice: the design with it, and what says it.  The pattern has the new value as {1}, the old one
 * as {2}, a number besides as {3}, and the word as {id}. */
static void
say_all (GPtrArray *choice, const RwDesign *design, RwParamId param, const char *pattern, const double *values,
         const char *word)
{
  RwRemedy *change = g_new0 (RwRemedy, 1);

  change->param = param;
  change->design = *design;
  change->pattern = pattern;
  change->word = g_strdup (word);
  change->value_count = RW_REMEDY_VALUES;
  memcpy (change->values, values, sizeof change->values);
  change->text = rw_remedy_words (change, pattern, RW_STYLE_FILE);
  g_ptr_array_add (choice, change);
}

static void
say (GPtrArray *choice, const RwDesign *design, RwParamId param, const char *pattern, double now, double before)
{
  const double values[RW_REMEDY_VALUES] = { now, before };

  say_all (choice, design, param, pattern, values, NULL);
}

static void
keep (Changes *changes, GPtrArray *choice)
{
  if (choice->len > 0)
    g_ptr_array_add (changes->choices, choice);
  else
    g_ptr_array_unref (choice);
}

/* One number set to another value. */
static void
set_one (Changes *changes, RwParamId param, double value, const char *pattern)
{
  RwDesign design = *changes->design;
  double before = rw_design_get (&design, param);
  GPtrArray *choice = new_choice ();

  if (fabs (value - before) > 1e-9 && rw_design_set (&design, param, value, NULL))
    say (choice, &design, param, pattern, value, before);
  keep (changes, choice);
}

static gboolean
is_missing (const Changes *changes, RwPieceUse use)
{
  for (guint i = 0; i < changes->cutting->pieces->len; i++)
    if (g_array_index (changes->cutting->pieces, RwPiece, i).use == use && changes->cutting->missing[i] > 0)
      return TRUE;
  return FALSE;
}

/* ---- the rim ---- */

static double
sum_of (const RwLengthList *list)
{
  double sum = 0;

  for (int k = 0; k < list->count; k++)
    sum += list->at[k];
  return sum;
}

/* A course as thick as a board of its wood allows, where the stack stays high enough. */
static void
thinner_course (Changes *changes, int course, double board)
{
  RwDesign design = *changes->design;
  double before = design.rim_course_thickness.at[course - 1];
  double now = floor ((board - design.rim_flatten_allowance) * 2 + 1e-9) / 2;
  GPtrArray *choice = new_choice ();

  if (now >= RW_COURSE_MIN && now < before)
    {
      design.rim_course_thickness.at[course - 1] = now;
      if (sum_of (&design.rim_course_thickness) >= design.rim_height)
        {
          const double values[RW_REMEDY_VALUES] = { now, before, course };

          say_all (choice, &design, RW_P_rim_course_thickness, N_("Make course {3} {1 mm} thick instead of {2 mm}"),
                   values, NULL);
        }
    }
  keep (changes, choice);
}

static void
thinner_courses (Changes *changes, int course)
{
  const char *wood = rw_woods[rw_rim_course_wood (changes->design, course)].id;

  for (guint k = 0; k < changes->cutting->shelf->items->len; k++)
    {
      const RwStockItem *item = g_ptr_array_index (changes->cutting->shelf->items, k);

      if (strcmp (item->material, wood) == 0 && item->count > 0)
        thinner_course (changes, course, item->thickness);
    }
}

/* One course more, all alike. */
static void
more_courses (Changes *changes)
{
  RwDesign design = *changes->design;
  int count = design.rim_course_thickness.count + 1;
  double each = ceil (design.rim_height / count * 2) / 2;
  GPtrArray *choice = new_choice ();

  if (count <= RW_COURSES_MAX && each >= RW_COURSE_MIN)
    {
      design.rim_course_thickness.count = count;
      for (int k = 0; k < count; k++)
        design.rim_course_thickness.at[k] = each;
      say (choice, &design, RW_P_rim_course_thickness, N_("Build the rim from {1} courses instead of {2}"), count,
           count - 1);
    }
  keep (changes, choice);
}

/* A course of another wood that is on the shelf. */
static void
other_wood (Changes *changes, int course, int wood)
{
  RwDesign design = *changes->design;
  GPtrArray *choice = new_choice ();
  int old = rw_rim_course_wood (&design, course);

  for (int k = design.rim_course_wood.count; k < design.rim_course_thickness.count; k++)
    design.rim_course_wood.at[k] = rw_rim_course_wood (changes->design, k + 1);
  design.rim_course_wood.count = design.rim_course_thickness.count;
  design.rim_course_wood.at[course - 1] = wood;
  if (wood != old)
    {
      const double values[RW_REMEDY_VALUES] = { course };

      say_all (choice, &design, RW_P_rim_course_wood, N_("Make course {1} of another wood: {id}"), values,
               _(rw_woods[wood].label));
    }
  keep (changes, choice);
}

static gboolean
is_on_shelf (const Changes *changes, int wood)
{
  for (guint k = 0; k < changes->cutting->shelf->items->len; k++)
    {
      const RwStockItem *item = g_ptr_array_index (changes->cutting->shelf->items, k);

      if (item->count > 0 && strcmp (item->material, rw_woods[wood].id) == 0)
        return TRUE;
    }
  return FALSE;
}

static void
courses (Changes *changes)
{
  for (guint i = 0; i < changes->cutting->pieces->len; i++)
    {
      const RwPiece *piece = &g_array_index (changes->cutting->pieces, RwPiece, i);

      if (piece->use != RW_PIECE_SEGMENT || changes->cutting->missing[i] == 0)
        continue;
      thinner_courses (changes, piece->number);
      for (int wood = 0; wood < rw_woods_count; wood++)
        if (is_on_shelf (changes, wood))
          other_wood (changes, piece->number, wood);
    }
  more_courses (changes);
}

static void
rim (Changes *changes)
{
  const RwDesign *d = changes->design;

  for (int step = 1; step <= FAR_SEGMENTS; step++)
    for (int sign = 1; sign >= -1; sign -= 2)
      set_one (changes, RW_P_rim_segments, d->rim_segments + sign * step,
               N_("Use {1} segments in a course instead of {2}"));
  if (d->rim_strip_width > 0)
    set_one (changes, RW_P_rim_strip_width, 0, N_("Rip the strips no wider than they need be"));
  for (double less = d->rim_turning_allowance - 0.5; less >= 1; less -= 0.5)
    set_one (changes, RW_P_rim_turning_allowance, less, N_("Leave {1 mm} for turning on each face instead of {2 mm}"));
  courses (changes);
}

/* ---- the neck ---- */

/* The neck glued up: from strips, with a scarf, with a stacked heel, with ears; any of them together. */
static void
neck_built (Changes *changes, gboolean ears, gboolean scarf, gboolean stack, int strips)
{
  RwDesign design = *changes->design;
  GPtrArray *choice = new_choice ();

  if (ears && design.headstock_ears != RW_YES)
    {
      design.headstock_ears = RW_YES;
      say (choice, &design, RW_P_headstock_ears, N_("Glue ears on the headstock, so that the blank can be narrower"),
           0, 0);
    }
  if (scarf && design.stock_neck_head != RW_NECK_HEAD_SCARFED)
    {
      design.stock_neck_head = RW_NECK_HEAD_SCARFED;
      say (choice, &design, RW_P_stock_neck_head, N_("Glue the headstock on with a scarf"), 0, 0);
    }
  if (stack && design.stock_neck_heel != RW_NECK_HEEL_STACKED)
    {
      design.stock_neck_heel = RW_NECK_HEEL_STACKED;
      say (choice, &design, RW_P_stock_neck_heel, N_("Stack the heel from blocks"), 0, 0);
    }
  if (strips > 1 && strips != (int) design.stock_neck_strips)
    {
      double before = design.stock_neck_strips;

      design.stock_neck_strips = strips;
      say (choice, &design, RW_P_stock_neck_strips, N_("Glue the neck up from {1} strips instead of {2}"), strips,
           before);
    }
  keep (changes, choice);
}

static void
neck (Changes *changes)
{
  for (int together = 1; together <= 4; together++)
    for (int way = 0; way < 8; way++)
      for (int strips = 1; strips <= NECK_STRIPS; strips++)
        {
          gboolean ears = way & 1, scarf = (way & 2) != 0, stack = (way & 4) != 0;

          if (ears + scarf + stack + (strips > 1) == together)
            neck_built (changes, ears, scarf, stack, strips);
        }
  for (double less = changes->design->neck_blank_allowance - 1; less >= 2; less -= 1)
    set_one (changes, RW_P_neck_blank_allowance, less, N_("Leave {1 mm} on the neck blank instead of {2 mm}"));
}

/* ---- the rest ---- */

static void
small_wood (Changes *changes)
{
  const RwDesign *d = changes->design;

  for (double less = d->stock_over_length - 2; less >= 2; less -= 2)
    set_one (changes, RW_P_stock_over_length, less,
             N_("Saw rough pieces {1 mm} longer than finished ones instead of {2 mm}"));
  for (double less = d->stock_planing - 0.25; less >= 0.25; less -= 0.25)
    set_one (changes, RW_P_stock_planing, less, N_("Leave {1 mm} for planing instead of {2 mm}"));
}

static void
metal (Changes *changes)
{
  const RwDesign *d = changes->design;

  if (is_missing (changes, RW_PIECE_HOOP))
    for (double less = d->stock_hoop_tail - 5; less >= 0; less -= 5)
      set_one (changes, RW_P_stock_hoop_tail, less, N_("Cut the hoop bar {1 mm} over instead of {2 mm}"));
  if (is_missing (changes, RW_PIECE_HOOK) || is_missing (changes, RW_PIECE_SHOE))
    for (int fewer = 1; fewer <= 4; fewer++)
      set_one (changes, RW_P_hooks_count, d->hooks_count - fewer, N_("Use {1} hooks instead of {2}"));
}

GPtrArray *
rw_stock_changes (const RwCutting *cutting, const RwDesign *design)
{
  Changes changes = { cutting, design, g_ptr_array_new_with_free_func ((GDestroyNotify) g_ptr_array_unref) };
  gboolean wood = FALSE;

  for (int use = RW_PIECE_SEGMENT; use <= RW_PIECE_STICK; use++)
    wood = wood || is_missing (&changes, (RwPieceUse) use);
  if (is_missing (&changes, RW_PIECE_SEGMENT) || is_missing (&changes, RW_PIECE_STAVE)
      || is_missing (&changes, RW_PIECE_PLY))
    rim (&changes);
  if (is_missing (&changes, RW_PIECE_FRETBOARD))
    for (int strips = 2; strips <= BOARD_STRIPS; strips++)
      set_one (&changes, RW_P_stock_board_strips, strips, N_("Glue the fretboard up from {1} strips instead of {2}"));
  if (is_missing (&changes, RW_PIECE_NECK) || is_missing (&changes, RW_PIECE_HEAD)
      || is_missing (&changes, RW_PIECE_HEEL))
    neck (&changes);
  if (wood)
    small_wood (&changes);
  metal (&changes);
  return changes.choices;
}
