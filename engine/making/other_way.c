#include "other_way.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* How much a row may be off for each unit that its cut may be: what the cut moves for one unit of the row, the other
 * way up, over the square root of how many such rows add up in the cut. */
typedef double (*Factor) (const RwResult *plan);

static double
one (const RwResult *plan)
{
  return 1;
}

static double
round_about (const RwResult *plan)
{
  return G_PI;
}

/* Both faces of the wall. */
static double
two (const RwResult *plan)
{
  return 2;
}

/* Two of them place one hole, or one neck: its hole in the heel and that in the rim. */
static double
one_of_two (const RwResult *plan)
{
  return sqrt (0.5);
}

/* The neck hangs by the mean of its rods: a hole counts for its share, and there are two for each rod. */
static double
one_of_the_holes (const RwResult *plan)
{
  return sqrt (plan->used.joint_rod_count / 2);
}

/* Dividers walk from the first hole to the last. */
static double
one_of_the_steps (const RwResult *plan)
{
  return 1 / sqrt (fmax (1, plan->used.hooks_count - 1));
}

/* W = (outer - inner)/(2 tan(180/N)). */
static double
short_edge (const RwResult *plan)
{
  return 2 * tan (G_PI / plan->used.rim_segments);
}

/* indexed: member k of the row says member k of the cut. */
static const struct
{
  RwSlot   row;
  int      param, slot; /* the cut's; -1 */
  gboolean indexed;
  Factor   factor;
} ways[] = {
  { RW_RIM_SEGMENT_INNER_EDGE, RW_P_rim_strip_width, -1, FALSE, short_edge },
  { RW_RIM_CIRCUMFERENCE, RW_P_rim_outer_diameter, -1, FALSE, round_about },
  { RW_RIM_INNER_DIAMETER, RW_P_rim_wall, -1, FALSE, two },
  { RW_HOOP_STRIP, -1, RW_HOOP_BORE, FALSE, round_about },
  { RW_HOOP_OUTER_DIAMETER, -1, RW_HOOP_BORE, FALSE, one },
  { RW_HOOKS_X, -1, RW_HOOKS_ARC, TRUE, one_of_two },
  { RW_HOOKS_Y, -1, RW_HOOKS_ARC, TRUE, one_of_two },
  { RW_HOOKS_CHORD, -1, RW_HOOKS_ARC, TRUE, one_of_the_steps },
  { RW_HOOKS_BLANK, -1, RW_HOOKS_LEG, FALSE, one },
  { RW_HOOKS_CUT, -1, RW_HOOKS_LEG, FALSE, one },
  { RW_JOINT_HEEL_ANGLE, -1, RW_NECK_ANGLE, FALSE, one },
  { RW_JOINT_HEEL_WIDTH, -1, RW_NECK_WIDTH_AT_END, FALSE, one },
  { RW_NECK_WIDTH_AT_RIM, -1, RW_NECK_WIDTH_AT_END, FALSE, one },
  { RW_JOINT_HOLE_ON_HEEL, RW_P_neck_set_height, -1, FALSE, one_of_the_holes },
  { RW_JOINT_HOLE_ON_RIM, RW_P_neck_set_height, -1, FALSE, one_of_the_holes },
  { RW_JOINT_STICK_ON_HEEL, RW_P_neck_set_height, -1, FALSE, one_of_two },
  { RW_JOINT_STICK_ON_RIM, RW_P_neck_set_height, -1, FALSE, one_of_two },
};

static const RwTolerance *
find (const RwBench *bench, const RwTolerance *tolerances, int param, int slot)
{
  for (guint i = 0; i < bench->cuts->len; i++)
    {
      const RwCut *cut = rw_bench_cut (bench, i);

      if (slot >= 0 ? cut->slot == slot : cut->param == param)
        return &tolerances[i];
    }
  return NULL;
}

static void
scale (const RwTolerance *of_cut, double factor, RwTolerance *tolerance)
{
  *tolerance = *of_cut;
  tolerance->asked *= factor;
  tolerance->held *= factor;
}

/* The neck's thickness runs straight from the first fret to the heel, and so does what it may be off by. */
static gboolean
thickness (const RwBench *bench, const RwTolerance *tolerances, int fret, RwTolerance *tolerance)
{
  const RwTolerance *first = find (bench, tolerances, RW_P_neck_thickness_first, -1);
  const RwTolerance *last = find (bench, tolerances, RW_P_neck_thickness_last, -1);
  const double *x = bench->planned.plan.fret_x;
  double share = (x[fret] - x[1]) / (bench->planned.side.heel_start - x[1]);

  if (first == NULL || last == NULL || !(share >= 0 && share <= 1))
    return FALSE;
  *tolerance = *(last->used > first->used ? last : first);
  tolerance->asked = first->asked + (last->asked - first->asked) * share;
  return TRUE;
}

gboolean
rw_other_way (const RwBench *bench, const RwTolerance *tolerances, RwSlot slot, RwTolerance *tolerance)
{
  const RwDim *dim = rw_slot_dim (slot);

  if (dim->first == RW_NECK_THICKNESS)
    return thickness (bench, tolerances, (int) (slot - dim->first), tolerance);
  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    if (ways[i].row == dim->first)
      {
        int member = ways[i].indexed ? (int) (slot - dim->first) : 0;
        const RwTolerance *cut
            = find (bench, tolerances, ways[i].param, ways[i].slot >= 0 ? ways[i].slot + member : -1);

        if (cut == NULL || !isfinite (cut->asked))
          return FALSE;
        scale (cut, ways[i].factor (&bench->planned), tolerance);
        return TRUE;
      }
  return FALSE;
}

/* ---- why not ---- */

static gboolean
in_a_groove (const RwResult *result)
{
  return result->used.hoop_seat != RW_SEAT_NOTCHES;
}

static gboolean
with_rods (const RwResult *result)
{
  return result->used.joint_kind == RW_JOINT_RODS;
}

static gboolean
fretless (const RwResult *result)
{
  return result->used.frets_count == 0;
}

static const struct
{
  RwSlot      row;
  gboolean  (*when) (const RwResult *result); /* NULL: in every build */
  const char *why;
} reasons[] = {
  { RW_FRETS_POSITION, fretless, N_("Only lines for the eye to go by") },
  { RW_FRETS_LENGTH, NULL, N_("Fret ends are filed to the board’s edge when they are in") },
  { RW_FRETS_TANG, NULL, N_("Tangs are nipped by trial") },
  { RW_NECK_FACET_SIDE, NULL, N_("Only the hand feels it") },
  { RW_NECK_FACET_BACK_TREBLE, NULL, N_("Only the hand feels it") },
  { RW_NECK_FACET_BACK_BASS, NULL, N_("Only the hand feels it") },
  { RW_NECK_FACET2_SIDE, NULL, N_("Only the hand feels it") },
  { RW_NECK_FACET2_BACK_TREBLE, NULL, N_("Only the hand feels it") },
  { RW_NECK_FACET2_BACK_BASS, NULL, N_("Only the hand feels it") },
  { RW_JOINT_INSIDE_LENGTH, with_rods, N_("The nuts on the rods take it up") },
  { RW_JOINT_INSIDE_LENGTH, NULL, N_("Fitted by trial between the rim’s faces") },
  { RW_HOOKS_ARC, in_a_groove, N_("A groove takes a hook wherever its shoe stands") },
  { RW_HOOKS_X, in_a_groove, N_("A groove takes a hook wherever its shoe stands") },
  { RW_HOOKS_Y, in_a_groove, N_("A groove takes a hook wherever its shoe stands") },
  { RW_HOOKS_CHORD, in_a_groove, N_("A groove takes a hook wherever its shoe stands") },
  { RW_SETUP_ACTION, NULL, N_("Comes of all others; its own limit is under Close enough") },
};

const char *
rw_why_not_asked (RwSlot slot, const RwResult *result)
{
  const RwDim *dim = rw_slot_dim (slot);

  for (guint i = 0; i < G_N_ELEMENTS (reasons); i++)
    if (reasons[i].row == dim->first && (reasons[i].when == NULL || reasons[i].when (result)))
      return reasons[i].why;
  return NULL;
}
