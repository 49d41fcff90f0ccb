#include "bench.h"

#include <math.h>
#include <string.h>

#define RAD (G_PI / 180)

/* What is cut, by which operation.  A row of dimensions stands for all its members. */
static const struct
{
  const char *id;
  RwParamId   operation;
} table[] = {
  { "rim.segment.mitre", RW_P_scatter_mitre },
  { "rim.segment.outer_edge", RW_P_scatter_segment },
  { "rim.strip_width", RW_P_scatter_rip },
  { "rim.stave.length", RW_P_scatter_length },
  { "rim.course.rough[k]", RW_P_scatter_rip },
  { "rim.outer_diameter", RW_P_scatter_turning },
  { "rim.wall", RW_P_scatter_wall },
  { "rim.height", RW_P_scatter_rim_height },
  { "hoop.bore", RW_P_scatter_hoop },
  { "hoop.notch_depth", RW_P_scatter_notch },
  { "hoop.notch_arc[k]", RW_P_scatter_notch_place },
  { "hooks.leg", RW_P_scatter_hook },
  { "shoes.stand_off", RW_P_scatter_shoe },
  { "shoes.height", RW_P_scatter_shoe },
  { "shoes.hole_below_edge", RW_P_scatter_shoe_hole },
  { "hooks.arc[k]", RW_P_scatter_shoe_hole },
  { "neck.set_height", RW_P_scatter_rod_hole },
  { "neck.angle", RW_P_scatter_heel },
  { "neck.side_angle", RW_P_scatter_heel },
  { "neck.nut_to_rim", RW_P_scatter_neck_length },
  { "headstock.angle", RW_P_scatter_head_angle },
  { "headstock.post_x[i]", RW_P_scatter_post },
  { "headstock.post_y[i]", RW_P_scatter_post },
  { "neck.board_length", RW_P_scatter_length },
  { "neck.width[n]", RW_P_scatter_board },
  { "neck.width_at_end", RW_P_scatter_board },
  { "frets.position[n]", RW_P_scatter_fret_slot },
  { "frets.slot_depth", RW_P_scatter_slot_depth },
  { "frets.crown_height", RW_P_scatter_fret_top },
  { "nut.string_height", RW_P_scatter_slots },
  { "fifth.start_height", RW_P_scatter_slots },
  { "strings.nut_y[i]", RW_P_scatter_slots },
  { "strings.start_y[i]", RW_P_scatter_slots },
  { "strings.bridge_y[i]", RW_P_scatter_slots },
  { "bridge.height", RW_P_scatter_slots },
  { "neck.thickness_first", RW_P_scatter_carving },
  { "neck.thickness_last", RW_P_scatter_carving },
  { "head.tension", RW_P_scatter_head },
};

/* ---- what there is to cut ---- */

/* Sizes that this build does not have, though the model answers them. */
static gboolean
is_idle (const RwDesign *d, int param, int slot)
{
  gboolean fretless = d->frets_count == 0;
  gboolean has_short = d->strings_set.at[d->strings_set.count - 1].is_short;

  return (fretless
          && (param == RW_P_frets_crown_height || (slot >= RW_FRETS_POSITION && slot <= RW_FRETS_POSITION_LAST)))
         || (!has_short && param == RW_P_fifth_start_height)
         || (d->hoop_seat != RW_SEAT_NOTCHES && param == RW_P_hoop_notch_depth);
}

static gboolean
is_known (const RwMeasured *measured, int param, int slot)
{
  return measured != NULL
         && ((param >= 0 && isfinite (measured->param[param])) || (slot >= 0 && isfinite (measured->slot[slot])));
}

/* A strip is as wide as it is set, or as it must be; bent plies have none. */
static double
planned_param (const RwResult *planned, RwParamId param)
{
  double value = rw_design_get (&planned->used, param), least = planned->value[RW_RIM_SEGMENT_MIN_WIDTH];

  return param == RW_P_rim_strip_width && (value == 0 || !isfinite (least)) ? least : value;
}

static void
add_cut (RwBench *bench, const RwMeasured *measured, int param, int slot, RwParamId operation)
{
  RwCut cut = { param, slot, operation, NAN, rw_design_get (&bench->design, operation), -INFINITY, INFINITY };

  cut.planned = slot >= 0 ? bench->planned.value[slot] : planned_param (&bench->planned, (RwParamId) param);
  if (param >= 0)
    {
      cut.least = rw_param ((RwParamId) param)->min;
      cut.most = rw_param ((RwParamId) param)->max;
    }
  if (isfinite (cut.planned) && !is_idle (&bench->planned.used, param, slot) && !is_known (measured, param, slot))
    g_array_append_val (bench->cuts, cut);
}

static const RwDim *
find_dim (const char *id)
{
  for (int i = 0; i < rw_dims_count; i++)
    if (strcmp (rw_dims[i].id, id) == 0)
      return &rw_dims[i];
  return NULL;
}

static void
list_cuts (RwBench *bench, const RwMeasured *measured)
{
  for (guint i = 0; i < G_N_ELEMENTS (table); i++)
    {
      int param = rw_param_find (table[i].id);
      const RwDim *dim = find_dim (table[i].id);

      if (dim == NULL)
        add_cut (bench, measured, param, -1, table[i].operation);
      for (int k = 0; dim != NULL && k < dim->span; k++)
        add_cut (bench, measured, param, (int) dim->first + k, table[i].operation);
    }
}

static void
put (RwMeasured *measured, const RwCut *cut, double value)
{
  double held = CLAMP (value, cut->least, cut->most);

  if (cut->param >= 0)
    measured->param[cut->param] = held;
  if (cut->slot >= 0)
    measured->slot[cut->slot] = held;
}

/* ---- the bridge finds its place ---- */

/* From the rim's face to the bridge along the axis: B of nut to rim = L - (B cos A + C sin A). */
static double
face_to_bridge (const RwBench *bench, const RwMeasured *measured)
{
  const RwResult *plan = &bench->planned;
  const RwDesign *d = &plan->used;
  double set = measured->param[RW_P_neck_set_height];
  double shim = plan->side.angle - plan->value[RW_NECK_ANGLE] * RAD;
  double angle = measured->param[RW_P_neck_angle] * RAD + shim;
  double rise = measured->param[RW_P_bridge_height] - plan->side.sag - (isfinite (set) ? set : d->neck_set_height);

  return (d->scale_length - measured->slot[RW_NECK_NUT_TO_RIM] - rise * sin (angle)) / cos (angle);
}

/* By as much as it differs from the plan's, so that a build without errors is the plan to the last bit.  Sag that
 * differs from the plan's moves it by less than a hundredth. */
static void
place_bridge (const RwBench *bench, RwMeasured *measured)
{
  const RwParam *param = rw_param (RW_P_bridge_offset);
  const RwDesign *d = &bench->planned.used;
  double diameter = measured->param[RW_P_rim_outer_diameter];
  double wider = isfinite (diameter) ? (diameter - d->rim_outer_diameter) / 2 : 0;
  double further = face_to_bridge (bench, measured) - face_to_bridge (bench, &bench->measured) - wider;

  measured->param[RW_P_bridge_offset] = CLAMP (d->bridge_offset + further, param->min, param->max);
}

/* ---- trying ---- */

static void
solve (const RwBench *bench, const double *off, RwResult *result)
{
  RwMeasured measured = bench->measured;

  for (guint i = 0; i < bench->cuts->len; i++)
    if (off[i] != 0)
      put (&measured, rw_bench_cut (bench, i), rw_bench_cut (bench, i)->planned + off[i]);
  if (!bench->place_known)
    place_bridge (bench, &measured);
  rw_solve (&bench->design, &measured, result);
}

/* The bridge that would give the wanted action: the one there is, made taller by what the action lacks. */
void
rw_bench_try (const RwBench *bench, const double *off, double *outcomes)
{
  RwResult result;

  solve (bench, off, &result);
  rw_outcomes_read (&result, &bench->planned, outcomes);
  outcomes[RW_OUTCOME_BRIDGE_HEIGHT]
      = result.value[RW_BRIDGE_HEIGHT] + (bench->action_wanted - outcomes[RW_OUTCOME_ACTION]) / bench->bridge_rate;
}

/* ---- making and unmaking ---- */

/* The bridge that is there, or the one that was thought of before anything was measured. */
static double
intended_bridge (const RwDesign *design, const RwMeasured *measured)
{
  RwResult plan;

  if (measured != NULL && isfinite (measured->param[RW_P_bridge_height]))
    return measured->param[RW_P_bridge_height];
  rw_solve (design, NULL, &plan);
  return plan.value[RW_BRIDGE_HEIGHT];
}

/* Facts that the side view takes as such, whatever was worked out from what. */
static void
fix_facts (RwBench *bench)
{
  RwMeasured *measured = &bench->measured;
  const RwResult *plan = &bench->planned;

  measured->param[RW_P_neck_angle] = measured->slot[RW_NECK_ANGLE] = plan->value[RW_NECK_ANGLE];
  measured->param[RW_P_bridge_height] = measured->slot[RW_BRIDGE_HEIGHT] = plan->value[RW_BRIDGE_HEIGHT];
  measured->slot[RW_NECK_NUT_TO_RIM] = plan->value[RW_NECK_NUT_TO_RIM];
  for (guint i = 0; i < bench->cuts->len; i++)
    put (measured, rw_bench_cut (bench, i), rw_bench_cut (bench, i)->planned);
}

/* How the action follows the bridge's height; by symmetric steps, as it bends a little. */
static double
bridge_rate (RwBench *bench)
{
  const double step = 0.1;
  double height = bench->planned.value[RW_BRIDGE_HEIGHT], action[2];
  RwResult result;

  for (int i = 0; i < 2; i++)
    {
      RwMeasured measured = bench->measured;

      measured.param[RW_P_bridge_height] = measured.slot[RW_BRIDGE_HEIGHT] = height + (i == 0 ? -step : step);
      if (!bench->place_known)
        place_bridge (bench, &measured);
      rw_solve (&bench->design, &measured, &result);
      action[i] = result.side.action;
    }
  return (action[1] - action[0]) / (2 * step);
}

static gboolean
settle (RwBench *bench, double action)
{
  gboolean action_follows = bench->design.neck_solve_for == RW_SOLVE_ACTION;
  double height = bench->planned.value[RW_BRIDGE_HEIGHT];

  rw_solve (&bench->design, &bench->measured, &bench->planned);
  bench->bridge_rate = bridge_rate (bench);
  rw_outcomes_read (&bench->planned, &bench->planned, bench->outcomes);
  bench->action_wanted = action_follows ? action : bench->planned.used.setup_action;
  bench->outcomes[RW_OUTCOME_BRIDGE_HEIGHT] = height + (bench->action_wanted - action) / bench->bridge_rate;
  /* A size outside its parameter's range is not taken by the model, and the build is then another. */
  return fabs (bench->planned.side.action - action) < 1e-6 && isfinite (bench->bridge_rate);
}

RwBench *
rw_bench_new (const RwDesign *design, const RwMeasured *measured)
{
  g_autoptr (RwBench) bench = g_new0 (RwBench, 1);

  bench->design = *design;
  bench->cuts = g_array_new (FALSE, FALSE, sizeof (RwCut));
  rw_measured_init (&bench->measured);
  if (measured != NULL)
    bench->measured = *measured;
  bench->place_known = isfinite (bench->measured.param[RW_P_bridge_offset]);
  rw_solve (design, measured, &bench->planned);
  if (bench->planned.side.outcome != RW_SIDE_SOLVED)
    return NULL;
  list_cuts (bench, measured);
  fix_facts (bench);
  bench->bridge_height = intended_bridge (design, measured);
  return settle (bench, bench->planned.side.action) ? g_steal_pointer (&bench) : NULL;
}

void
rw_bench_free (RwBench *bench)
{
  g_array_unref (bench->cuts);
  g_free (bench);
}

/* ---- cuts ---- */

const RwCut *
rw_bench_cut (const RwBench *bench, guint i)
{
  return &g_array_index (bench->cuts, RwCut, i);
}

char *
rw_cut_id (const RwCut *cut)
{
  return cut->slot >= 0 ? rw_slot_id ((RwSlot) cut->slot) : g_strdup (rw_param ((RwParamId) cut->param)->id);
}

char *
rw_cut_label (const RwCut *cut, const char *(*translate) (const char *english))
{
  return cut->slot >= 0 ? rw_slot_label_in ((RwSlot) cut->slot, translate)
                        : g_strdup (translate (rw_param ((RwParamId) cut->param)->label));
}

const char *
rw_cut_unit (const RwCut *cut)
{
  return cut->slot >= 0 ? rw_slot_dim ((RwSlot) cut->slot)->unit : rw_param ((RwParamId) cut->param)->unit;
}
