#include "solve.h"

#include "model.h"

/* The planned design with measured parameters in their place. */
static void
take_measured (RwDesign *used, const RwMeasured *measured)
{
  for (int id = 0; id < RW_PARAM_COUNT; id++)
    if (isfinite (measured->param[id]))
      rw_design_set (used, (RwParamId) id, measured->param[id], NULL);
    else if (measured->holds_param[id])
      rw_design_copy (used, &measured->held, (RwParamId) id);

  for (int k = 0; k < used->rim_course_thickness.count; k++)
    if (isfinite (measured->course_thickness[k]))
      used->rim_course_thickness.at[k] = measured->course_thickness[k];
}

/* A measured neck angle or bridge height is a fact.  Where it is the one that should have been worked out,
 * what is still free is worked out instead: of the two the other one, or the action when both are facts. */
static void
free_what_is_not_measured (RwDesign *used, const RwMeasured *measured)
{
  gboolean angle = isfinite (measured->param[RW_P_neck_angle]);
  gboolean bridge = isfinite (measured->param[RW_P_bridge_height]);

  if (used->neck_solve_for == RW_SOLVE_ANGLE && angle)
    used->neck_solve_for = bridge ? RW_SOLVE_ACTION : RW_SOLVE_BRIDGE;
  else if (used->neck_solve_for == RW_SOLVE_BRIDGE && bridge)
    used->neck_solve_for = angle ? RW_SOLVE_ACTION : RW_SOLVE_ANGLE;
}

RwDesign
rw_as_it_stands (const RwResult *result)
{
  RwDesign design = result->used;

  if (result->side.outcome == RW_SIDE_SOLVED)
    {
      design.neck_solve_for = RW_SOLVE_ACTION;
      design.neck_angle = result->value[RW_NECK_ANGLE]; /* a shim adds to it */
      design.bridge_height = result->side.bridge_height;
    }
  return design;
}

static void
run_parts (RwModel *m)
{
  rw_model_strings (m);
  rw_model_head (m);
  rw_model_rim (m);
  rw_model_air (m);
  rw_model_hoop (m);
  rw_model_plan (m);
  rw_model_side (m);
  rw_model_neck (m);
  rw_model_headstock (m);
  rw_model_joint (m);
  rw_model_hooks (m);
  rw_model_holes (m);
  rw_model_bridge (m);
  rw_model_blank (m);
  rw_model_pitch (m);
  rw_model_movement (m);
  rw_model_finish (m);
  rw_model_rim_load (m);
  rw_model_mass (m);
}

void
rw_solve (const RwDesign *design, const RwMeasured *measured, RwResult *result)
{
  rw_solve_guessed (design, measured, RW_GUESSED, result);
}

void
rw_solve_guessed (const RwDesign *design, const RwMeasured *measured, RwGuessed guessed, RwResult *result)
{
  RwModel m = { .d = &result->used, .measured = measured, .r = result, .guessed = guessed };

  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    {
      gboolean held = measured != NULL && measured->holds_slot[slot];

      result->value[slot] = held ? measured->slot[slot] : NAN;
      result->asked[slot] = NAN;
    }
  result->used = *design;
  if (measured != NULL)
    {
      take_measured (&result->used, measured);
      free_what_is_not_measured (&result->used, measured);
    }
  m.crown = result->used.frets_count > 0 ? result->used.frets_crown_height : 0;
  m.strip_width = NAN;
  run_parts (&m);
}
